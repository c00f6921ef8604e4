using Cavaxis.Quantities.Faults;

namespace Cavaxis.Web.Shelf;

/// <summary>
/// Where cases are kept. Every saved value is a version that stays; a save names the version that it was made from, and one
/// made from an older version is refused and told the newer one. What is acknowledged survives the end of the process.
/// </summary>
public interface ICaseShelf
{
    /// <summary>Told after each save: identifier and number of the new version. May come on any thread.</summary>
    event Action<string, long>? Changed;

    /// <summary>All patients, the last saved first.</summary>
    /// <returns>The list.</returns>
    /// <exception cref="InputFaultException">The store cannot be read.</exception>
    Task<IReadOnlyList<ShelvedCase>> ListAsync();

    /// <summary>The newest version of a patient.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>The version; null where there is no such patient.</returns>
    /// <exception cref="InputFaultException">The store cannot be read.</exception>
    Task<CaseVersion?> OpenAsync(string id);

    /// <summary>One version of a patient.</summary>
    /// <param name="id">Identifier.</param>
    /// <param name="number">Number of the version.</param>
    /// <returns>The version; null where there is none.</returns>
    /// <exception cref="InputFaultException">The store cannot be read.</exception>
    Task<CaseVersion?> ReadAsync(string id, long number);

    /// <summary>Puts a new patient on the shelf.</summary>
    /// <param name="json">The case: a JSON object.</param>
    /// <param name="change">What happened, in words.</param>
    /// <returns>Its first version.</returns>
    /// <exception cref="InputFaultException">The text is no JSON object, or the store cannot be written.</exception>
    Task<CaseVersion> AddAsync(string json, string change);

    /// <summary>Saves a new version.</summary>
    /// <param name="id">Identifier.</param>
    /// <param name="json">The case: a JSON object.</param>
    /// <param name="expected">Number of the version that this one was made from.</param>
    /// <param name="change">What was changed, in words.</param>
    /// <returns>Saved, or not saved with the newer version.</returns>
    /// <exception cref="InputFaultException">No such patient, the text is no JSON object, or the store cannot be written; nothing was changed.</exception>
    Task<SaveOutcome> SaveAsync(string id, string json, long expected, string change);

    /// <summary>All versions of a patient without their text, newest first.</summary>
    /// <param name="id">Identifier.</param>
    /// <returns>The versions; empty where there is no such patient.</returns>
    /// <exception cref="InputFaultException">The store cannot be read.</exception>
    Task<IReadOnlyList<VersionNote>> HistoryAsync(string id);
}
