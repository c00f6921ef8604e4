using Cavaxis.Planning.Case;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Planning.Json;

/// <summary>Turns positioned values into numbers and measurements inside their bounds.</summary>
/// <param name="ledger">Takes the faults.</param>
internal sealed class NumberBinder(FaultLedger ledger)
{
    private const string ValueField = "value";
    private const string SdField = "sd";

    /// <summary>A number of a field; null when it has a fault.</summary>
    /// <param name="field">The field.</param>
    /// <param name="value">What the file has.</param>
    /// <param name="path">Path of the field.</param>
    public object? Number(RecordField field, PositionedValue value, string path) =>
        InBounds(value, path, field.Number!, AcceptedInput.Of(field)) is double number ? number : null;

    /// <summary>A whole number of a field; null when it has a fault.</summary>
    /// <param name="field">The field.</param>
    /// <param name="value">What the file has.</param>
    /// <param name="path">Path of the field.</param>
    public object? Whole(RecordField field, PositionedValue value, string path)
    {
        if (InBounds(value, path, field.Number!, AcceptedInput.Of(field)) is not double number)
        {
            return null;
        }

        if (double.IsInteger(number))
        {
            return (int)number;
        }

        ledger.Add(FaultCode.WrongKind, path, value.Shown, $"a whole number, {NumberWords.Range(field.Number!)}", "Write a whole number.", value.Place);
        return null;
    }

    /// <summary>A measurement of a field; null when it has a fault.</summary>
    /// <param name="field">The field.</param>
    /// <param name="value">What the file has.</param>
    /// <param name="path">Path of the field.</param>
    public Measurement? Measurement(RecordField field, PositionedValue value, string path)
    {
        NumberAttribute bounds = field.Number!;
        string accepted = AcceptedInput.Of(field);
        if (value.Kind != JsonKind.Object)
        {
            return InBounds(value, path, bounds, accepted) is double bare ? new Measurement(bare, bounds.UsualSd, SdGiven: false) : null;
        }

        double? number = null;
        double? sd = null;
        bool valueGiven = false;
        bool sdGiven = false;
        foreach (PositionedMember member in value.Members)
        {
            string at = $"{path}.{member.Name}";
            ledger.Place(at, member.Value.Place);
            switch (member.Name)
            {
                case ValueField:
                    valueGiven = true;
                    number = InBounds(member.Value, at, bounds, NumberWords.Accepted(bounds));
                    break;
                case SdField:
                    sdGiven = true;
                    NumberAttribute sdBounds = SdBounds(bounds);
                    sd = InBounds(member.Value, at, sdBounds, NumberWords.Accepted(sdBounds));
                    break;
                default:
                    string? closest = ClosestWord.To(member.Name, [ValueField, SdField]);
                    ledger.Add(
                        FaultCode.UnknownField, at, member.Value.Shown, "the fields value and sd",
                        closest is null ? "Remove the field." : $"Did you mean \"{closest}\"?", member.Place);
                    break;
            }
        }

        if (!valueGiven)
        {
            ledger.Add(
                FaultCode.MissingField, $"{path}.{ValueField}", string.Empty, NumberWords.Accepted(bounds),
                "Add the field \"value\", or write \"unknown\" in place of the braces.", value.Place);
        }

        if (number is not double known || (sdGiven && sd is null))
        {
            return null;
        }

        if (sd is double spread && spread > Math.Max(Math.Abs(known), bounds.UsualSd) && bounds.Low >= 0)
        {
            ledger.Add(
                FaultCode.Contradiction, $"{path}.{SdField}", NumberWords.Of(spread),
                $"a standard deviation not above the value, {NumberWords.Of(known)} {NumberWords.Unit(bounds.Unit)}".TrimEnd(),
                "Check value and sd for a slip of the decimal point; write \"unknown\" where the measurement says nothing.",
                ledger.PlaceOf($"{path}.{SdField}"));
            return null;
        }

        return new Measurement(known, sd ?? bounds.UsualSd, sdGiven);
    }

    /// <summary>Bounds of the error of a measurement: not negative, and not wider than the field's whole range.</summary>
    /// <param name="bounds">Bounds of the value.</param>
    public static NumberAttribute SdBounds(NumberAttribute bounds) => new(0, bounds.High - bounds.Low, bounds.Unit);

    private double? InBounds(PositionedValue value, string path, NumberAttribute bounds, string accepted)
    {
        if (value.IsFaulty)
        {
            return null;
        }

        if (value.Kind != JsonKind.Number)
        {
            ledger.Add(FaultCode.WrongKind, path, value.Shown, accepted, KindRemedy(value, accepted), value.Place);
            return null;
        }

        if (value.Number >= bounds.Low && value.Number <= bounds.High)
        {
            return value.Number;
        }

        string unit = NumberWords.Unit(bounds.Unit);
        ledger.Add(
            FaultCode.OutOfRange, path, value.Shown, accepted,
            unit.Length == 0 ? "Check the number." : $"Check the number and its unit ({unit}).", value.Place);
        return null;
    }

    private static string KindRemedy(PositionedValue value, string accepted) => value switch
    {
        { Kind: JsonKind.Text } when !accepted.Contains(JsonName.Unknown, StringComparison.Ordinal) && value.Text == JsonName.Unknown =>
            "This number is needed; measure or estimate it.",
        { Kind: JsonKind.Text } => "Write the number without quotes and without its unit.",
        { Kind: JsonKind.Null } when accepted.Contains(JsonName.Unknown, StringComparison.Ordinal) => "Write \"unknown\" or leave the field out.",
        { Kind: JsonKind.Null } => "This number is needed; measure or estimate it.",
        _ => "Write one number.",
    };
}
