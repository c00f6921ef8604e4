using Cavaxis.Devices.Cannulae;
using Cavaxis.Planning.Json;
using Cavaxis.Quantities;

namespace Cavaxis.Cli.Commands;

/// <summary>One cannula in the list.</summary>
/// <param name="Id">Identifier.</param>
/// <param name="Family">Family.</param>
/// <param name="Description">In words.</param>
/// <param name="OuterDiameterFrench">Size, French.</param>
/// <param name="OuterDiameterMm">Size, mm.</param>
/// <param name="InsertableLengthCm">Insertable length, cm.</param>
/// <param name="Certainty">How sure the numbers are.</param>
public sealed record CannulaRow(
    string Id, string Family, string Description, double OuterDiameterFrench, double OuterDiameterMm, double InsertableLengthCm, string Certainty)
{
    /// <summary>The row of a cannula.</summary>
    /// <param name="cannula">The cannula.</param>
    /// <returns>The row.</returns>
    public static CannulaRow Of(Cannula cannula)
    {
        ArgumentNullException.ThrowIfNull(cannula);
        return new CannulaRow(
            cannula.Id,
            JsonName.Of(cannula.Family.ToString()),
            cannula.Description,
            cannula.OuterDiameterFrench,
            cannula.OuterDiameterMm,
            cannula.InsertableLengthMm / 10,
            Source.InWords(cannula.GeometrySource.Certainty));
    }
}
