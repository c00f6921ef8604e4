using Cavaxis.Course.Outcomes;
using Cavaxis.Quantities;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Entry;

namespace Cavaxis.Web.Pages.Outcomes;

/// <summary>What a chart is asked to look for, as typed.</summary>
public sealed class CusumAsk
{
    /// <summary>Expected risk of death of each case, %; empty for none.</summary>
    internal string RiskPercent { get; set; } = string.Empty;

    /// <summary>True to look for doubled odds, false for halved.</summary>
    internal bool Worse { get; set; } = true;

    /// <summary>Control limit; empty for that of the published example.</summary>
    internal string Limit { get; set; } = string.Empty;

    /// <summary>The chart.</summary>
    /// <param name="cases">The cases.</param>
    /// <returns>The chart; null where no risk is given.</returns>
    /// <exception cref="InputFaultException">A number is none, or out of range.</exception>
    internal CusumChart? Of(IReadOnlyList<ProgrammeCase> cases)
    {
        double? risk = Number(RiskPercent, "expected risk", "%", "0.1 to 99.9 %");
        double? limit = Number(Limit, "control limit", string.Empty, "0.5 to 20");
        if (risk is double given && given is < 0.1 or > 99.9)
        {
            throw new InputFaultException(new InputFault(FaultCode.OutOfRange, "expected risk", InputFault.Shown(RiskPercent), "0.1 to 99.9 %", "Give the share of such patients that is expected to die before discharge."));
        }

        CusumSetting published = Worse ? CusumSetting.Worse : CusumSetting.Better;
        CusumSetting setting = limit is double own ? new CusumSetting(published.OddsRatio, own, new Source("limit typed on the page of outcomes", Certainty.Assumption)) : published;
        return risk is null && cases.All(static c => c.ExpectedDeath is null) ? null : ProgrammeCusum.Deaths(cases, setting, risk / 100);
    }

    private static double? Number(string typed, string field, string unit, string accepted) => TypedNumber.Read(typed, unit, withError: false) switch
    {
        null => null,
        System.Text.Json.Nodes.JsonValue number when number.TryGetValue(out double value) => value,
        _ => throw new InputFaultException(new InputFault(FaultCode.WrongKind, field, InputFault.Shown(typed), accepted, "Write a number, or nothing.")),
    };
}
