namespace Cavaxis.Devices.Tests.Bench;

/// <summary>A sound bench file, which the fault tests spoil one line at a time.</summary>
internal static class SampleBench
{
    internal const string Text =
        """
        # id: own-return-17fr
        # description: Arterial return cannula, label data, bench with water
        # family: arterialReturn
        # outer diameter [Fr]: 17
        # insertable length [cm]: 18
        # inner diameter [mm]: 4.9
        # largest wire [mm]: 0.97
        # temperature [degC]: 20
        # source: bench of the department
        # hole [mm]: return side holes | 12 | 10 | 4 | 1.5 | allRound
        # hole [mm]: return end | 0 | 0 | 1 | 4.7 | end
        # measured in the morning
        flow [L/min],pressure drop [mmHg]
        1,7.4
        2,27.1
        3,58
        4,99.3
        5,150.6
        6,211.2

        """;

    internal static string With(string old, string replacement)
    {
        Assert.Contains(old, Text, StringComparison.Ordinal);
        int at = Text.IndexOf(old, StringComparison.Ordinal);
        return string.Concat(Text.AsSpan(0, at), replacement, Text.AsSpan(at + old.Length));
    }
}
