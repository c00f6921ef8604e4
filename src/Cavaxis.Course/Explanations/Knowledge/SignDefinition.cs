using Cavaxis.Course.Observations;

namespace Cavaxis.Course.Explanations.Knowledge;

/// <summary>
/// How an observed quantity serves as a sign. The working scale is ln(value + offset) where there is an offset, else the value itself.
/// </summary>
/// <param name="Quantity">Which.</param>
/// <param name="Group">Name of the group whose members are read from one line, probe or sample and err together.</param>
/// <param name="Direction">+1 or −1: how the member errs when its group does.</param>
/// <param name="LogOffset">Offset of the logarithmic scale, unit of the quantity; null for a plain scale.</param>
/// <param name="Drift">Standard deviation of the change between two windows while nothing in particular happens, working scale.</param>
/// <param name="UsualLevel">Usual level on support, unit of the quantity, where the circulation model gives none; else null.</param>
/// <param name="UsualLevelSd">Its spread between patients, working scale.</param>
/// <param name="Effort">What it takes to observe it.</param>
/// <param name="ForVenousReturn">Has a meaning where blood returns to a vein only.</param>
/// <param name="ForArterialReturn">Has a meaning where blood returns to an artery.</param>
public sealed record SignDefinition(
    ObservedQuantity Quantity,
    string Group,
    int Direction,
    double? LogOffset,
    double Drift,
    double? UsualLevel,
    double? UsualLevelSd,
    SignEffort Effort,
    bool ForVenousReturn,
    bool ForArterialReturn)
{
    /// <summary>The value on the working scale.</summary>
    /// <param name="value">Value in the unit of the quantity.</param>
    /// <returns>Working value.</returns>
    public double ToScale(double value) => LogOffset is double offset ? Math.Log(Math.Max(0, value) + offset) : value;

    /// <summary>The value of a place on the working scale.</summary>
    /// <param name="scaled">Working value.</param>
    /// <returns>Value in the unit of the quantity.</returns>
    public double FromScale(double scaled) => LogOffset is double offset ? Math.Exp(scaled) - offset : scaled;

    /// <summary>A spread on the working scale.</summary>
    /// <param name="value">Value about which it spreads, unit of the quantity.</param>
    /// <param name="sd">Standard deviation, unit of the quantity.</param>
    /// <returns>Standard deviation, working scale.</returns>
    public double SpreadToScale(double value, double sd) => LogOffset is double offset ? sd / (Math.Max(0, value) + offset) : sd;

    /// <summary>Whether the sign has a meaning on a kind of support.</summary>
    /// <param name="support">The kind.</param>
    /// <returns>True where it has.</returns>
    public bool Serves(SupportKind support) => support switch
    {
        SupportKind.VenoVenous => ForVenousReturn,
        SupportKind.VenoArterial => ForArterialReturn,
        _ => true,
    };
}
