using Cavaxis.Blood.Oxygen;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Course.GasExchange;

/// <summary>Three samples drawn at one time, from which recirculation follows.</summary>
public sealed record RecirculationReadings
{
    /// <summary>Readings.</summary>
    /// <param name="pre">Blood before the membrane lung.</param>
    /// <param name="post">Blood after it.</param>
    /// <param name="venous">What stands for mixed venous blood.</param>
    /// <param name="haemoglobinGPerDl">Haemoglobin, 3 to 25 g/dL; null when it was not read, and the content method then has no answer.</param>
    /// <exception cref="InputFaultException">A value is out of range.</exception>
    public RecirculationReadings(OxygenSample pre, OxygenSample post, VenousSample venous, Estimate? haemoglobinGPerDl = null)
    {
        ArgumentNullException.ThrowIfNull(pre);
        ArgumentNullException.ThrowIfNull(post);
        ArgumentNullException.ThrowIfNull(venous);
        if (haemoglobinGPerDl is not null)
        {
            Require.InRange(haemoglobinGPerDl.Value, 3, 25, nameof(haemoglobinGPerDl), "Give haemoglobin in g/dL (100 g/L is 10 g/dL).");
        }

        (Pre, Post, Venous, HaemoglobinGPerDl) = (pre, post, venous, haemoglobinGPerDl);
    }

    /// <summary>Blood before the membrane lung.</summary>
    public OxygenSample Pre { get; }

    /// <summary>Blood after it.</summary>
    public OxygenSample Post { get; }

    /// <summary>What stands for mixed venous blood.</summary>
    public VenousSample Venous { get; }

    /// <summary>Haemoglobin, g/dL; null when it was not read.</summary>
    public Estimate? HaemoglobinGPerDl { get; }

    /// <summary>Conditions of the blood, where a tension has to be told from a saturation; standard if not given.</summary>
    public BloodConditions Conditions { get; init; } = BloodConditions.Standard;

    /// <summary>Constants of the content equation.</summary>
    public BloodConstants Constants { get; init; } = BloodConstants.Default;
}
