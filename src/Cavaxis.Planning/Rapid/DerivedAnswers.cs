namespace Cavaxis.Planning.Rapid;

/// <summary>Answers that follow from age, size and clock and are not typed.</summary>
internal static class DerivedAnswers
{
    /// <summary>Age.</summary>
    public const string Age = "ageYears";

    /// <summary>Weight.</summary>
    public const string Weight = "weightKg";

    /// <summary>Body mass index.</summary>
    public const string BodyMassIndex = "bodyMassIndex";

    /// <summary>Minutes without circulation.</summary>
    public const string NoFlow = "noFlowMin";

    /// <summary>Minutes from compressions to flow.</summary>
    public const string LowFlow = "lowFlowMin";

    /// <summary>Minutes of compressions so far.</summary>
    public const string Compressions = "compressionMin";

    /// <summary>Whether pregnant: a man is not.</summary>
    public const string Pregnant = "pregnant";

    /// <summary>Names that cannot be typed as an answer.</summary>
    public static IReadOnlyList<string> Names { get; } = [Age, Weight, BodyMassIndex, NoFlow, LowFlow, Compressions];

    /// <summary>What follows.</summary>
    /// <param name="input">What is known.</param>
    /// <param name="body">The size with its spread.</param>
    /// <returns>The answers.</returns>
    public static IEnumerable<RapidAnswer> Of(RapidInput input, RapidBody body)
    {
        yield return RapidAnswer.Of(Age, NumberRange.Exactly(input.AgeYears));
        yield return RapidAnswer.Of(Weight, new NumberRange(body.WeightKg.Low, body.WeightKg.High));
        yield return RapidAnswer.Of(BodyMassIndex, body.BodyMassIndex);
        if (input.Sex == Anatomy.Body.Sex.Male)
        {
            yield return RapidAnswer.Of(Pregnant, false);
        }

        if (input.Clock.NoFlow is { } without)
        {
            yield return RapidAnswer.Of(NoFlow, without);
        }

        if (input.Clock.Compressions is { } compressions)
        {
            yield return RapidAnswer.Of(Compressions, compressions);
        }

        if (input.Clock.LowFlow is { } low)
        {
            yield return RapidAnswer.Of(LowFlow, low);
        }
    }
}
