using System.Globalization;
using Cavaxis.Planning.Rules;

namespace Cavaxis.Planning.Plans;

/// <summary>Names and values of criteria as people read them.</summary>
public static class PlainCriterion
{
    /// <summary>The criterion in words.</summary>
    /// <param name="name">Criterion.</param>
    /// <returns>Such as "fit along the axis".</returns>
    public static string Words(CriterionName name) => name switch
    {
        CriterionName.Fit => "fit along the axis",
        CriterionName.FlowReached => "share of the flow needed",
        CriterionName.VesselRatio => "cannula to vessel",
        CriterionName.InletMargin => "inlet pressure margin",
        CriterionName.ReturnMargin => "return pressure margin",
        CriterionName.OxygenDelivery => "oxygen delivery over consumption",
        CriterionName.Saturation => "arterial saturation",
        CriterionName.RecirculationBound => "recirculation",
        CriterionName.CirculatorySupport => "circulatory support",
        CriterionName.LeftVentricularLoad => "load on the left ventricle",
        CriterionName.LimbThreat => "threat to the leg",
        CriterionName.Punctures => "number of vessels used",
        CriterionName.GroinsUsed => "groins used",
        CriterionName.SurgicalAccess => "surgical access",
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "Not a criterion."),
    };

    /// <summary>A criterion's value with its unit.</summary>
    /// <param name="name">Criterion.</param>
    /// <param name="value">Value.</param>
    /// <returns>Such as "42 mmHg".</returns>
    public static string Value(CriterionName name, double value) => name switch
    {
        CriterionName.Fit or CriterionName.FlowReached or CriterionName.VesselRatio or CriterionName.RecirculationBound or CriterionName.CirculatorySupport
            or CriterionName.LeftVentricularLoad => string.Create(CultureInfo.InvariantCulture, $"{value * 100:F0} %"),
        CriterionName.Saturation => string.Create(CultureInfo.InvariantCulture, $"{value:F0} %"),
        CriterionName.InletMargin or CriterionName.ReturnMargin => string.Create(CultureInfo.InvariantCulture, $"{value:F0} mmHg"),
        CriterionName.OxygenDelivery => string.Create(CultureInfo.InvariantCulture, $"{value:F1}"),
        CriterionName.LimbThreat => string.Create(CultureInfo.InvariantCulture, $"{value:F2} of 1"),
        CriterionName.SurgicalAccess => value > 0 ? "yes" : "no",
        _ => string.Create(CultureInfo.InvariantCulture, $"{value:F0}"),
    };
}
