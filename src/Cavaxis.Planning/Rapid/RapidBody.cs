using Cavaxis.Anatomy.Body;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Rapid;

/// <summary>The size of the patient as far as it is known: the middle body, and a small and a large one that it may be.</summary>
internal sealed record RapidBody
{
    /// <summary>Relative spread of a weight that somebody guesses (assumption of this project).</summary>
    public const double GuessedWeightRelativeSd = 0.1;

    private const double ShortestCm = 40;
    private const double TallestCm = 230;
    private const double LightestKg = 2;
    private const double HeaviestKg = 350;
    private const double LowestIndex = 6.01;
    private const double HighestIndex = 119.9;

    private RapidBody(Estimate height, Estimate weight, BodyHabitus middle, BodyHabitus small, BodyHabitus large) =>
        (HeightCm, WeightKg, Middle, Small, Large) = (height, weight, middle, small, large);

    /// <summary>Height, cm.</summary>
    public Estimate HeightCm { get; }

    /// <summary>Weight, kg.</summary>
    public Estimate WeightKg { get; }

    /// <summary>The middle body.</summary>
    public BodyHabitus Middle { get; }

    /// <summary>Short and light, each at the lower end of its interval.</summary>
    public BodyHabitus Small { get; }

    /// <summary>Tall and heavy, each at the upper end of its interval.</summary>
    public BodyHabitus Large { get; }

    /// <summary>What the body mass index may be, kg/m²: every height of the interval with every weight of it.</summary>
    public NumberRange BodyMassIndex => new(WeightKg.Low / Square(HeightCm.High), WeightKg.High / Square(HeightCm.Low));

    /// <summary>The size of a patient.</summary>
    /// <param name="input">What is known.</param>
    /// <returns>The size.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The numbers cannot belong together.</exception>
    public static RapidBody Of(RapidInput input)
    {
        Estimate height = input.HeightCm is double known
            ? Estimate.Normal(known, 0, Origin.Measured)
            : HeightGuess.Of(input.AgeYears, input.Sex);
        Estimate weight = Estimate.Normal(input.WeightKg, GuessedWeightRelativeSd * input.WeightKg, Origin.Estimated);
        return new RapidBody(
            height, weight, new BodyHabitus(input.AgeYears, input.Sex, height.Value, weight.Value),
            Possible(input, height.Low, weight.Low), Possible(input, height.High, weight.High));
    }

    // At the end of both intervals a body can leave what the size tables hold; the nearest that they hold is taken.
    private static BodyHabitus Possible(RapidInput input, double heightCm, double weightKg)
    {
        double height = Math.Clamp(heightCm, ShortestCm, TallestCm);
        double low = Math.Max(LightestKg, LowestIndex * Square(height));
        double high = Math.Min(HeaviestKg, HighestIndex * Square(height));
        return new BodyHabitus(input.AgeYears, input.Sex, height, Math.Clamp(weightKg, low, high));
    }

    private static double Square(double heightCm) => heightCm * heightCm * 1e-4;
}
