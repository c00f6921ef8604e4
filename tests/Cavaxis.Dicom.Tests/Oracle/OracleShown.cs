namespace Cavaxis.Dicom.Tests.Oracle;

/// <summary>One frame that pydicom decoded.</summary>
/// <param name="Shown">True where its colours were written too.</param>
public sealed record OracleShown(bool Shown);
