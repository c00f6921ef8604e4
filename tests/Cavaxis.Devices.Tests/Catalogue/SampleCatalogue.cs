namespace Cavaxis.Devices.Tests.Catalogue;

/// <summary>A small sound catalogue, which the fault tests spoil one place at a time.</summary>
internal static class SampleCatalogue
{
    internal const string Text =
        """
        {
          "format": "cavaxis.devices",
          "formatVersion": 1,
          "version": "1.0.0",
          "cannulae": [
            {
              "id": "own-drain", "description": "Drainage", "family": "singleStageDrainage",
              "outerDiameterFrench": 21, "insertableLengthMm": 500,
              "lumens": [
                {
                  "purpose": "drainage",
                  "segments": [ { "lengthMm": 40, "innerDiameterMm": 8 }, { "lengthMm": 500, "innerDiameterMm": 6.1, "areaMm2": 29.3 } ],
                  "holeGroups": [
                    { "name": "tip holes", "fromTipMm": 30, "spanMm": 20, "count": 8, "diameterMm": 2, "facing": "allRound" },
                    { "name": "tip holes", "fromTipMm": 0, "spanMm": 0, "count": 1, "diameterMm": 4, "facing": "end" }
                  ],
                  "waterCurve": { "referenceDiameterMm": 6.1, "eulerLogCoefficients": [2, -0.25], "lowestReynolds": 2000, "highestReynolds": 20000, "relativeSd": 0.02 }
                }
              ],
              "largestWireMm": 0.97, "depthMarksEveryMm": 10, "bendingStiffnessNMm2": { "low": 500, "high": 2500 },
              "geometrySource": { "citation": "Label", "certainty": "seen" }
            }
          ],
          "pumps": [
            { "id": "own-pump", "description": "Pump", "referenceSpeedRpm": 3500, "shutOffMmHg": 430, "linearMmHgPerLPerMin": -8,
              "quadraticMmHgPerLPerMin2": -2.6, "lowestSpeedRpm": 500, "highestSpeedRpm": 5000, "highestFlowLPerMin": 8,
              "lowestInletPressureMmHg": -100, "source": { "citation": "Bench", "certainty": "seen" } }
          ],
          "membraneLungs": [
            { "id": "own-lung", "description": "Lung", "ratedFlowLPerMin": 7, "lowestFlowLPerMin": 0.5, "highestFlowLPerMin": 7.5,
              "linearMmHgPerLPerMin": 4, "quadraticMmHgPerLPerMin2": 0.25, "carbonDioxideConductance": 80, "primingVolumeMl": 250,
              "source": { "citation": "Label", "certainty": "seen" } }
          ],
          "wires": [
            { "id": "own-wire", "description": "Wire", "diameterMm": 0.889, "lengthCm": 180, "floppyTipCm": 7, "lowFlexuralModulusGPa": 17,
              "highFlexuralModulusGPa": 18, "floppyTipStiffnessNMm2": { "low": 1, "high": 11 },
              "source": { "citation": "Bench", "certainty": "seen" } }
          ]
        }
        """;

    internal static string With(string old, string replacement)
    {
        Assert.Contains(old, Text, StringComparison.Ordinal);
        int at = Text.IndexOf(old, StringComparison.Ordinal);
        return string.Concat(Text.AsSpan(0, at), replacement, Text.AsSpan(at + old.Length));
    }
}
