namespace Cavaxis.Validation;

/// <summary>The reference checks of one room. Pure: the same rows at every call.</summary>
public interface IReferenceChecks
{
    /// <summary>Computes every row now.</summary>
    /// <returns>The rows in the order of the document.</returns>
    IEnumerable<ValidationRow> Rows();
}
