using Cavaxis.Devices.Bench;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Devices.Tests.Bench;

public class BenchCurveFileFaultTests
{
    public static TheoryData<string, string, FaultCode> Spoiled => new()
    {
        { "# id: own-return-17fr\n", "", FaultCode.MissingField },
        { "# id: own-return-17fr", "# id: Own Return", FaultCode.NotAChoice },
        { "# id: own-return-17fr", "# id: ", FaultCode.WrongLength },
        { "# id: own-return-17fr", "# id: 17fr", FaultCode.NotAChoice },
        { "# id: own-return-17fr", "# id: own-return-17fr\n# id: other", FaultCode.DuplicateField },
        { "# id: own-return-17fr", "# id: " + "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa", FaultCode.WrongLength },
        { "# description: Arterial return cannula, label data, bench with water\n", "", FaultCode.MissingField },
        { "# description: Arterial", "# description: \u0007Arterial", FaultCode.WrongLength },
        { "# family: arterialReturn\n", "", FaultCode.MissingField },
        { "# family: arterialReturn", "# family: arterial", FaultCode.NotAChoice },
        { "# family: arterialReturn", "# family: 3", FaultCode.NotAChoice },
        { "# family: arterialReturn", "# family: bicavalDualLumen", FaultCode.Contradiction },
        { "# family: arterialReturn", "# family: arterialReturn\n# lumen: drainage", FaultCode.Contradiction },
        { "# family: arterialReturn", "# family: arterialReturn\n# lumen: sideways", FaultCode.NotAChoice },
        { "# family: arterialReturn", "# family: arterialReturn\n# like: bicaval-27fr-29cm", FaultCode.Contradiction },
        { "# family: arterialReturn", "# maker: nobody", FaultCode.UnknownField },
        { "# outer diameter [Fr]: 17\n", "", FaultCode.MissingField },
        { "# outer diameter [Fr]: 17", "# outer diameter: 17", FaultCode.NotAChoice },
        { "# outer diameter [Fr]: 17", "# outer diameter [furlong?]: 17", FaultCode.NotAChoice },
        { "# outer diameter [Fr]: 17", "# outer diameter [Fr]: seventeen", FaultCode.WrongKind },
        { "# outer diameter [Fr]: 17", "# outer diameter [Fr]: 17,5", FaultCode.WrongKind },
        { "# outer diameter [Fr]: 17", "# outer diameter [Fr]: 1700", FaultCode.OutOfRange },
        { "# outer diameter [Fr]: 17", "# outer diameter [Fr]: -17", FaultCode.OutOfRange },
        { "# outer diameter [Fr]: 17", "# outer diameter [Fr]: NaN", FaultCode.OutOfRange },
        { "# outer diameter [Fr]: 17", "# outer diameter [Fr]: 12", FaultCode.Contradiction },
        { "# insertable length [cm]: 18\n", "", FaultCode.MissingField },
        { "# insertable length [cm]: 18", "# insertable length [mmHg]: 18", FaultCode.NotAChoice },
        { "# insertable length [cm]: 18", "# insertable length [m]: 18", FaultCode.OutOfRange },
        { "# insertable length [cm]: 18", "# insertable length [cm]: 1.2", FaultCode.Contradiction },
        { "# inner diameter [mm]: 4.9\n", "", FaultCode.MissingField },
        { "# inner diameter [mm]: 4.9", "# inner diameter [mm]: 0", FaultCode.OutOfRange },
        { "# inner diameter [mm]: 4.9", "# inner diameter [mm]: 5.9", FaultCode.Contradiction },
        { "# inner diameter [mm]: 4.9", "# inner diameter [mm]: Infinity", FaultCode.OutOfRange },
        { "# largest wire [mm]: 0.97", "# largest wire [mm]: thick", FaultCode.WrongKind },
        { "# largest wire [mm]: 0.97", "# largest wire [mm]: 97", FaultCode.OutOfRange },
        { "# temperature [degC]: 20\n", "", FaultCode.MissingField },
        { "# temperature [degC]: 20", "# temperature [K]: 293", FaultCode.NotAChoice },
        { "# temperature [degC]: 20", "# temperature [degC]: 95", FaultCode.OutOfRange },
        { "# temperature [degC]: 20", "# temperature [degC]: warm", FaultCode.WrongKind },
        { "# temperature [degC]: 20", "# density [kg/m3]: 1100", FaultCode.MissingField },
        { "# temperature [degC]: 20", "# viscosity [mPa.s]: 3", FaultCode.MissingField },
        { "# temperature [degC]: 20", "# temperature [degC]: 20\n# density [kg/m3]: 1100\n# viscosity [mPa.s]: 3", FaultCode.Contradiction },
        { "# temperature [degC]: 20", "# density [kg/m3]: 1100\n# viscosity [Pa.s]: 3", FaultCode.OutOfRange },
        { "# temperature [degC]: 20", "# density [g]: 1.1\n# viscosity [mPa.s]: 3", FaultCode.NotAChoice },
        { "# source: bench of the department", "# source:", FaultCode.WrongLength },
        { "# hole [mm]: return side", "# hole: return side", FaultCode.NotAChoice },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| 12 | 10 | 4 | 1.5", FaultCode.MalformedText },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| 12 | 10 | 4 | 1.5 | inwards", FaultCode.NotAChoice },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| 12 | 10 | four | 1.5 | allRound", FaultCode.WrongKind },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| 12 | 10 | 4.5 | 1.5 | allRound", FaultCode.OutOfRange },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| -12 | 10 | 4 | 1.5 | allRound", FaultCode.OutOfRange },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| 12 | 10 | 4 | NaN | allRound", FaultCode.OutOfRange },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| 250 | 10 | 4 | 1.5 | allRound", FaultCode.Contradiction },
        { "| 12 | 10 | 4 | 1.5 | allRound", "| 12 | 10 | 4 | 9 | allRound", FaultCode.Contradiction },
        { "return end | 0 | 0 | 1 | 4.7 | end", "return end | 0 | 0 | 2 | 4.7 | end", FaultCode.Contradiction },
        { "return end | 0 | 0 | 1 | 4.7 | end", "| 0 | 0 | 1 | 4.7 | end", FaultCode.NotAChoice },
        { "flow [L/min],pressure drop [mmHg]\n", "", FaultCode.UnknownField },
        { "flow [L/min]", "flow", FaultCode.NotAChoice },
        { "flow [L/min]", "flow [mmHg]", FaultCode.NotAChoice },
        { "flow [L/min]", "flow [L/min", FaultCode.NotAChoice },
        { "pressure drop [mmHg]", "pressure drop [inches]", FaultCode.NotAChoice },
        { "pressure drop [mmHg]", "pressure [mmHg]", FaultCode.UnknownField },
        { "flow [L/min],pressure drop [mmHg]", "flow [L/min],flow [L/min]", FaultCode.DuplicateField },
        { "flow [L/min],pressure drop [mmHg]", "flow [L/min]", FaultCode.MissingField },
        { "flow [L/min],pressure drop [mmHg]", "flow [L/min],pressure drop [mmHg],remark", FaultCode.UnknownField },
        { "3,58", "3", FaultCode.MalformedText },
        { "3,58", "3,58,12", FaultCode.MalformedText },
        { "3,58", "3,", FaultCode.MissingField },
        { "3,58", "three,58", FaultCode.WrongKind },
        { "3,58", "3,58 mmHg", FaultCode.WrongKind },
        { "3,58", "3,NaN", FaultCode.OutOfRange },
        { "3,58", "3,-58", FaultCode.OutOfRange },
        { "3,58", "-3,58", FaultCode.OutOfRange },
        { "3,58", "0,0", FaultCode.OutOfRange },
        { "3,58", "3,1e300", FaultCode.OutOfRange },
        { "3,58", "3,5.8", FaultCode.Contradiction },
        { "3,58", "3,\"58", FaultCode.MalformedText },
        { "3,58\n4,99.3\n5,150.6\n6,211.2\n", "", FaultCode.TooFewPoints },
        { "1,7.4\n2,27.1\n3,58\n4,99.3\n5,150.6\n6,211.2\n", "", FaultCode.TooFewPoints },
        { "1,7.4\n2,27.1\n3,58\n4,99.3\n5,150.6\n6,211.2\n", "4,99\n4.1,103\n4.2,108\n4.3,113\n", FaultCode.TooFewPoints },
        { "1,7.4\n2,27.1\n3,58\n4,99.3\n5,150.6\n6,211.2\n", "1,7\n2,56\n3,189\n4,448\n5,875\n", FaultCode.Contradiction },
        { "1,7.4\n2,27.1\n3,58\n4,99.3\n5,150.6\n6,211.2\n", "1,50\n2,51\n3,52\n4,52.5\n5,53\n", FaultCode.Contradiction },
    };

    [Theory]
    [MemberData(nameof(Spoiled))]
    public void A_spoiled_file_gets_its_typed_fault(string old, string replacement, FaultCode code)
    {
        InputFaultException fault = Assert.Throws<InputFaultException>(() => BenchCurveFile.Parse(SampleBench.With(old, replacement)));
        Assert.Contains(fault.Faults, f => f.Code == code);
        Assert.All(fault.Faults, f => Assert.False(string.IsNullOrWhiteSpace(f.Remedy)));
    }

    [Fact]
    public void All_faults_come_at_once_in_the_order_of_their_lines()
    {
        string text = SampleBench.Text
            .Replace("# family: arterialReturn", "# family: arterial", StringComparison.Ordinal)
            .Replace("# temperature [degC]: 20", "# temperature [degC]: 95", StringComparison.Ordinal)
            .Replace("2,27.1", "two,27.1", StringComparison.Ordinal)
            .Replace("5,150.6", "5,-150.6", StringComparison.Ordinal);
        InputFaultException fault = Assert.Throws<InputFaultException>(() => BenchCurveFile.Parse(text));
        Assert.Equal([3, 8, 15, 18], fault.Faults.Select(f => f.Line ?? 0));
        Assert.Equal([FaultCode.NotAChoice, FaultCode.OutOfRange, FaultCode.WrongKind, FaultCode.OutOfRange], fault.Faults.Select(f => f.Code));
    }

    [Fact]
    public void An_unknown_model_is_not_found()
    {
        const string Text = "# id: a\n# description: b\n# like: nothing\n# temperature [degC]: 20\nflow [L/min],pressure drop [mmHg]\n1,7\n";
        Assert.Contains(Assert.Throws<InputFaultException>(() => BenchCurveFile.Parse(Text)).Faults, f => f.Code == FaultCode.NotFound);
    }

    [Fact]
    public void A_dual_lumen_model_needs_to_be_told_which_lumen()
    {
        const string Text = "# id: a\n# description: b\n# like: bicaval-27fr-29cm\n# temperature [degC]: 20\nflow [L/min],pressure drop [mmHg]\n1,7\n2,26\n3,57\n4,98\n";
        InputFault fault = Assert.Single(Assert.Throws<InputFaultException>(() => BenchCurveFile.Parse(Text)).Faults);
        Assert.Equal((FaultCode.MissingField, "lumen"), (fault.Code, fault.Field));
    }

    [Fact]
    public void Too_long_a_text_is_refused_before_it_is_read() =>
        Assert.Equal(
            FaultCode.FileTooLarge,
            Assert.Throws<InputFaultException>(() => BenchCurveFile.Parse(new string('#', BenchCurveFile.LongestText + 1))).Faults[0].Code);

    [Fact]
    public void Any_damage_ends_in_a_typed_fault_or_a_cannula() =>
        Gen.Select(Gen.Int[0, SampleBench.Text.Length - 1], Gen.Int[0, 12], Gen.String[0, 6]).Array[1, 4].Sample(
            damages =>
            {
                string text = SampleBench.Text;
                foreach ((int place, int length, string put) in damages)
                {
                    int at = Math.Min(place, text.Length);
                    text = string.Concat(text.AsSpan(0, at), put, text.AsSpan(Math.Min(text.Length, at + length)));
                }

                OnlyTypedFaults(text);
            },
            iter: 3000);

    [Fact]
    public void Any_text_at_all_ends_in_a_typed_fault() =>
        Gen.String.Sample(text => Assert.Throws<InputFaultException>(() => BenchCurveFile.Parse(text)), iter: 1000);

    private static void OnlyTypedFaults(string text)
    {
        try
        {
            BenchImport import = BenchCurveFile.Parse(text);
            Assert.True(import.Quality.RelativeSd >= 0);
        }
        catch (InputFaultException fault)
        {
            Assert.NotEmpty(fault.Faults);
        }
    }
}
