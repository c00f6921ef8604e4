using System.Globalization;
using Cavaxis.Circulation.Calibration;
using Cavaxis.Planning.Running;
using Cavaxis.Quantities;
using Cavaxis.Web.Frame;
using Cavaxis.Web.Questions;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>The one number that matters with what stands around it, in words.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Value">The number, or a word.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Interval">Its interval.</param>
/// <param name="HowSure">How sure it is.</param>
/// <param name="WouldChange">What would change it.</param>
/// <param name="LookNext">Next steps.</param>
internal sealed record AnswerWords(
    string Title, string Value, string Unit, string Interval, string HowSure, string WouldChange, IReadOnlyList<LookNext> LookNext)
{
    private const int Told = 3;

    /// <summary>True where there is a number, which then is calculated.</summary>
    public bool HasNumber => Unit.Length > 0;

    /// <summary>The answer.</summary>
    /// <param name="picture">The circulation.</param>
    /// <param name="outcome">What changes do; null before any.</param>
    /// <param name="reading">The reading of it.</param>
    /// <param name="patient">Identifier of the patient, for addresses.</param>
    public static AnswerWords Of(RunningPicture picture, WhatIfOutcome? outcome, IReadOnlyList<ReadingSentence> reading, string patient)
    {
        WhatIfResult result = outcome?.Result ?? picture.Present!;
        string words = QuantityWords.Of(picture.KeyQuantity);
        string title = char.ToUpperInvariant(words[0]) + words[1..] + (outcome is null ? ", now" : ", after the change");
        IReadOnlyList<LookNext> next = Next(picture, reading, patient);
        string change = picture.Levers.Count == 0
            ? "None of the steps that were tried moves it by more than is told apart at the bedside."
            : string.Join("; ", picture.Levers.Take(Told).Select(l => $"{l.Words}: {Signed(picture, l.Difference)}")) + ". Each tried alone from now.";
        if (!result.Found)
        {
            return new AnswerWords(title, "No answer", string.Empty, string.Empty, LeftOut(result), change, next);
        }

        QuantityChange row = result[picture.KeyQuantity];
        if (row is not { Before: Estimate before, After: Estimate after })
        {
            return new AnswerWords(title, "No value", string.Empty, string.Empty, QuantityWords.NotDefined(picture.KeyQuantity), change, next);
        }

        string was = outcome is null ? string.Empty : $"; now {ReadingWriter.Number(picture.KeyQuantity, before.Value)}";
        return new AnswerWords(
            title,
            ReadingWriter.Number(picture.KeyQuantity, after.Value),
            QuantityWords.UnitOf(picture.KeyQuantity),
            $"90 %: {ReadingWriter.Number(picture.KeyQuantity, after.Low)} to {ReadingWriter.Number(picture.KeyQuantity, after.High)}{was}",
            Sure(picture, result), change, next);
    }

    /// <summary>Who was left out, in a sentence.</summary>
    /// <param name="result">The result.</param>
    public static string LeftOut(WhatIfResult result)
    {
        string why = string.Join(" ", result.LeftOut.Select(static l => l.Sentence));
        return result.Found
            ? string.Create(CultureInfo.InvariantCulture, $"Bands over {result.Used} of {result.Members} patients that fit.{(why.Length > 0 ? " Left out: " + why : string.Empty)}")
            : string.Create(CultureInfo.InvariantCulture, $"Only {result.Used} of {result.Members} patients that fit are left, too few for bands. {why}");
    }

    private static string Sure(RunningPicture picture, WhatIfResult result)
    {
        string open = picture.IsFitted
            ? picture.LeftOpen.Count == 0
                ? "The readings leave no fitted number open."
                : $"The readings leave open: {string.Join(", ", picture.LeftOpen.Take(Told).Select(Name))}{(picture.LeftOpen.Count > Told ? $" and {picture.LeftOpen.Count - Told} more" : string.Empty)}."
            : string.Join(" ", picture.LeftOpen);
        return $"{LeftOut(result)} {open}{(picture.Warnings.Count > 0 ? " Some readings do not go together; see below." : string.Empty)}";
    }

    private static LookNext[] Next(RunningPicture picture, IReadOnlyList<ReadingSentence> reading, string patient)
    {
        IEnumerable<(string Words, string Question)> steps = reading.Count > 0
            ? reading.Select(static s => (s.LookNext, s.Question))
            : ReadingRules.All.Where(r => r.Quantity == picture.KeyQuantity).Select(static r => (r.LookNext, r.Question));
        return [.. steps.Distinct().Take(2).Select(s => new LookNext(s.Words, Question.Of(s.Question)!.Address(patient)))];
    }

    private static string Signed(RunningPicture picture, double difference) =>
        $"{(difference > 0 ? "+" : string.Empty)}{ReadingWriter.Number(picture.KeyQuantity, difference)} {QuantityWords.UnitOf(picture.KeyQuantity)}";

    private static string Name(string sentence)
    {
        int colon = sentence.IndexOf(':', StringComparison.Ordinal);
        string name = colon > 0 ? sentence[..colon] : sentence.TrimEnd('.');
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
