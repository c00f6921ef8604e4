namespace Cavaxis.Planning.Json;

/// <summary>
/// Fills an input record from JSON by its properties and their attributes: <see cref="Case.NumberAttribute"/> gives the
/// bounds, <see cref="Case.TextAttribute"/> the length, <c>required</c> what must be there.
/// </summary>
/// <typeparam name="T">A record with a parameterless constructor.</typeparam>
public static class RecordBinder<T>
    where T : class
{
    /// <summary>Fills the record and records every fault, not only the first.</summary>
    /// <param name="root">The outermost value.</param>
    /// <param name="ledger">Takes the faults and the places.</param>
    /// <returns>
    /// The record. When the ledger has faults, the faulty fields hold what the record starts with, and the record serves
    /// for nothing but checks between fields that are sound.
    /// </returns>
    public static T Bind(PositionedValue root, FaultLedger ledger)
    {
        ArgumentNullException.ThrowIfNull(root);
        ArgumentNullException.ThrowIfNull(ledger);
        return (T)new ValueBinder(ledger).Record(RecordShape.Of(typeof(T)), root, string.Empty);
    }
}
