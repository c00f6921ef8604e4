using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>Everything that the page shows of a circulation and an answer, made once for each of them and not at each drawing of the page.</summary>
/// <param name="Answer">The number that matters.</param>
/// <param name="Packet">Waves.</param>
/// <param name="Note">What the waves show.</param>
/// <param name="Asked">The changes in words.</param>
/// <param name="Reading">What changes and why.</param>
/// <param name="Limits">What the model does not follow.</param>
/// <param name="Rows">The table of bands: what is read.</param>
/// <param name="MoreRows">All other quantities.</param>
/// <param name="Caption">What the bands stand on.</param>
internal sealed record WhatIfView(
    AnswerWords Answer,
    WavePacket Packet,
    string Note,
    string Asked,
    IReadOnlyList<ReadingSentence> Reading,
    IReadOnlyList<string> Limits,
    IReadOnlyList<BandRow> Rows,
    IReadOnlyList<BandRow> MoreRows,
    string Caption)
{
    private static readonly CirculationQuantity[] NotShown =
    [
        CirculationQuantity.OutflowVelocityTimeIntegralCm, CirculationQuantity.RecirculationByContentPercent, CirculationQuantity.LeftArmSaturationPercent,
        CirculationQuantity.PulmonaryArterySystolicMmHg, CirculationQuantity.PulmonaryArteryDiastolicMmHg, CirculationQuantity.RightArmPo2MmHg,
    ];

    /// <summary>Makes it.</summary>
    /// <param name="picture">The circulation; it has members.</param>
    /// <param name="outcome">The answer; null before any.</param>
    /// <param name="patient">Identifier of the patient, for addresses.</param>
    public static WhatIfView Of(RunningPicture picture, WhatIfOutcome? outcome, string patient)
    {
        CirculationParameters shown = picture.Shown!.Parameters;
        WhatIfResult result = outcome?.Result ?? picture.Present!;
        IReadOnlyList<ParameterChange> changes = outcome?.Changes ?? [];
        ReadingFacts facts = new(picture.Sense, changes, result.Quantities)
        {
            PresentValues = changes.ToDictionary(static c => c.Parameter, c => shown[c.Parameter]),
            Alone = outcome?.Alone ?? new Dictionary<(CirculationParameter, CirculationQuantity), double>(),
        };
        IReadOnlyList<ReadingSentence> reading = outcome is not null && result.Found ? ReadingWriter.Write(facts) : [];
        IReadOnlyList<WaveStrip> strips = WaveStrip.Of(picture.Sense);
        BandRow[] Rows(Func<CirculationQuantity, bool> which) => result.Found ? [.. Told(picture.Sense).Where(which).Select(q => BandRow.Of(result[q], facts))] : [];
        bool moves = outcome is { After: not null, Transition: not null };
        return new WhatIfView(
            AnswerWords.Of(picture, outcome, reading, patient),
            moves ? WavePacket.Of(picture.Shown, outcome!.Transition!, outcome.After!, strips) : WavePacket.Of(picture.Shown, strips),
            Words(picture, outcome, moves),
            string.Join("; ", changes.Select(c => ChangeWords.Of(c, shown, picture.ReferenceSpeedPerMin))) + ".",
            reading,
            ModelLimits.Of(shown, facts),
            Rows(ReadingTable.IsRead),
            Rows(static q => !ReadingTable.IsRead(q)),
            $"Calculated: medians and 90 % intervals. {AnswerWords.LeftOut(result)}");
    }

    private static string Words(RunningPicture picture, WhatIfOutcome? outcome, bool moves)
    {
        string who = picture.IsFitted ? "the best fit" : "the middle one of the patients";
        return moves
            ? $"Calculated for {who}, in real time: now, then the seconds after the change, then the new rest. Gases take minutes to come to rest; the line “new rest” stands where that time is left out."
            : outcome is null ? $"Calculated for {who}, in real time: the settled breath, again and again."
            : $"Calculated for {who}, as it is now: the change cannot be shown. {outcome.AfterReason}";
    }

    private static IEnumerable<CirculationQuantity> Told(SupportSense sense) => Enum.GetValues<CirculationQuantity>().Where(q => !NotShown.Contains(q)
        && (sense != SupportSense.None || !IsOfCircuit(q))
        && (sense.HasVenousReturn() || (!q.ToString().StartsWith("Recirculation", StringComparison.Ordinal) && q != CirculationQuantity.EffectiveFlowLPerMin)));

    private static bool IsOfCircuit(CirculationQuantity q) => q is >= CirculationQuantity.PumpFlowLPerMin and <= CirculationQuantity.EffectiveFlowLPerMin
        or CirculationQuantity.PreMembraneSaturationPercent or CirculationQuantity.PostMembraneSaturationPercent or CirculationQuantity.PreMembraneSwingPercent
        or CirculationQuantity.OxygenFromMembraneMlPerMin or CirculationQuantity.DrainageLowestOpenness or CirculationQuantity.InletPressureSwingMmHg;
}
