namespace Cavaxis.Bench;

/// <summary>The middle half of some values.</summary>
internal sealed class Quartiles
{
    private readonly double[] sorted;

    /// <summary>Sorts.</summary>
    /// <param name="values">At least one value.</param>
    public Quartiles(double[] values) => sorted = [.. values.Order()];

    /// <summary>A quarter of the values lies below.</summary>
    public double Low => At(0.25);

    /// <summary>Half of the values lie below.</summary>
    public double Median => At(0.5);

    /// <summary>A quarter of the values lies above.</summary>
    public double High => At(0.75);

    private double At(double share)
    {
        double place = share * (sorted.Length - 1);
        int below = (int)place;
        int above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }
}
