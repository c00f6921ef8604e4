using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Cavaxis.Course.Events;
using Cavaxis.Course.Imports;
using Cavaxis.Course.Observations;
using Cavaxis.Quantities.Faults;
using CsCheck;

namespace Cavaxis.Course.Tests.Imports;

public class ObservationCsvTests
{
    [Fact]
    public void A_file_with_commas_and_points_is_read_row_by_row()
    {
        ObservationImport import = Read("time,pumpFlowLPerMin,inletPressureMmHg\n2031-02-03T04:05:06+01:00,4.25,-80\n2031-02-03T03:06Z,,-85.5\n");
        Assert.Equal(0, import.FaultCount);
        Assert.Equal([2, 3], import.Good.Select(static r => r.Line));
        Assert.Equal(new DateTimeOffset(2031, 2, 3, 3, 5, 6, TimeSpan.Zero), import.Good[0].At);
        Assert.Equal([(ObservedQuantity.PumpFlowLPerMin, 4.25), (ObservedQuantity.InletPressureMmHg, -80)], import.Good[0].Readings.Select(static r => (r.Quantity, r.Value)));
        Assert.Equal((ObservedQuantity.InletPressureMmHg, -85.5), Assert.Single(import.Good[1].Readings) is var r ? (r.Quantity, r.Value) : default);
    }

    [Fact]
    public void A_file_with_semicolons_takes_decimal_commas_and_one_with_commas_does_not()
    {
        Assert.Equal([4.25, 4.5], Read("time;pumpFlowLPerMin\n2031-02-03T04:05Z;4,25\n2031-02-03T04:06Z;4.5\n").Good.Select(static r => r.Readings[0].Value));
        ObservationImport import = Read("time,pumpFlowLPerMin\n2031-02-03T04:05Z,\"4,25\"\n");
        Assert.Equal((FaultCode.WrongKind, 2, 2), Assert.Single(import.Faults) is var f ? (f.Code, f.Line, f.Column) : default);
    }

    [Fact]
    public void A_time_without_an_offset_needs_one_for_the_file()
    {
        const string Text = "time,pumpFlowLPerMin\n2031-02-03 04:05,4\n";
        InputFault fault = Assert.Single(Read(Text).Faults);
        Assert.Equal(("time", "Give the offset of the file's clock."), (fault.Field, fault.Remedy));
        Assert.Equal(new DateTimeOffset(2031, 2, 3, 2, 5, 0, TimeSpan.Zero), Assert.Single(Read(Text, TimeSpan.FromHours(2)).Good).At);
    }

    [Theory]
    [InlineData("2031-02-03T04:05Z,42", FaultCode.OutOfRange, 2)]
    [InlineData("2031-02-03T04:05Z,four", FaultCode.WrongKind, 2)]
    [InlineData("2031-02-03T04:05Z,1e1", FaultCode.WrongKind, 2)]
    [InlineData("2031-02-03T04:05Z,NaN", FaultCode.WrongKind, 2)]
    [InlineData("2031-02-30T04:05Z,4", FaultCode.MalformedText, 1)]
    [InlineData("03.02.2031 04:05,4", FaultCode.MalformedText, 1)]
    [InlineData("1031-02-03T04:05Z,4", FaultCode.MalformedText, 1)]
    [InlineData("2031-02-03T04:05Z,4,5", FaultCode.MalformedText, 1)]
    [InlineData("2031-02-03T04:05Z", FaultCode.MalformedText, 1)]
    [InlineData("2031-02-03T04:05Z,", FaultCode.MissingField, 1)]
    public void A_bad_cell_is_named_with_line_and_column_and_the_other_rows_are_good(string row, FaultCode code, int column)
    {
        ObservationImport import = Read($"time,pumpFlowLPerMin\n2031-02-03T04:04Z,3\n{row}\n2031-02-03T04:06Z,5\n");
        InputFault fault = Assert.Single(import.Faults);
        Assert.Equal((code, 3, column), (fault.Code, fault.Line, fault.Column));
        Assert.Equal([3, 5], import.Good.Select(static r => r.Readings[0].Value));
        Assert.Equal(3, import.RowsRead);
    }

    [Fact]
    public void A_column_that_no_one_knows_is_passed_over_and_the_nearest_name_is_told()
    {
        ObservationImport import = Read("time,pumpflow,pumpFlowLPerMim,pumpSpeedPerMin\n2031-02-03T04:05Z,4,4,3000\n");
        Assert.Equal([2, 3], import.Faults.Select(static f => f.Column!.Value));
        Assert.Contains("pumpFlowLPerMin", import.Faults[1].Remedy, StringComparison.Ordinal);
        Assert.Equal(ObservedQuantity.PumpSpeedPerMin, Assert.Single(Assert.Single(import.Good).Readings).Quantity);
    }

    [Theory]
    [InlineData("=cmd|' /C calc'!A0")]
    [InlineData("+1+1")]
    [InlineData("-1+cmd|x")]
    [InlineData("@SUM(A1)")]
    [InlineData("=HYPERLINK(\"\"x\"\")")]
    [InlineData("<script>")]
    public void A_text_that_a_spreadsheet_would_run_is_never_shown_again(string text)
    {
        ObservationImport import = Read($"time,pumpFlowLPerMin,\"{text}\"\n\"{text}\",\"{text}\",4\n");
        Assert.Equal(3, import.FaultCount);
        Assert.All(import.Faults, f => Assert.DoesNotContain(text.Replace("\"\"", "\"", StringComparison.Ordinal), f.ToString(), StringComparison.Ordinal));
        Assert.All(import.Faults, static f => Assert.StartsWith("(a text of", f.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_without_a_time_or_with_a_column_twice_gives_no_row()
    {
        Assert.Equal((FaultCode.MissingField, 0), (Assert.Single(Read("pumpFlowLPerMin\n4\n").Faults).Code, Read("pumpFlowLPerMin\n4\n").Good.Count));
        Assert.Equal(FaultCode.DuplicateField, Assert.Single(Read("time,pumpFlowLPerMin,pumpFlowLPerMin\n2031-02-03T04:05Z,4,5\n").Faults).Code);
        Assert.Equal(FaultCode.DuplicateField, Assert.Single(Read("time,time,pumpFlowLPerMin\n2031-02-03T04:05Z,2031-02-03T04:06Z,5\n").Faults).Code);
    }

    [Fact]
    public void What_is_no_text_or_nothing_or_too_large_is_refused_whole()
    {
        Assert.Equal(FaultCode.WrongEncoding, Assert.Single(ObservationCsv.Read([0xFF, 0xFE, 0x41, 0x00], "a.csv").Faults).Code);
        Assert.Equal(FaultCode.MissingField, Assert.Single(Read(" \n").Faults).Code);
        Assert.Equal(FaultCode.FileTooLarge, Assert.Single(ObservationCsv.Read(new byte[ObservationCsv.LargestBytes + 1], "a.csv").Faults).Code);
    }

    [Fact]
    public void Two_hundred_thousand_rows_are_read_and_one_more_is_not()
    {
        StringBuilder text = new("time,pumpFlowLPerMin\n");
        for (int i = 0; i < ObservationCsv.MostRows; i++)
        {
            text.Append("2031-02-03T04:05:06Z,4.2\n");
        }

        Assert.Equal((ObservationCsv.MostRows, 0), Read(text.ToString()) is var all ? (all.Good.Count, all.FaultCount) : default);
        ObservationImport over = Read(text.Append("2031-02-03T04:05:06Z,4.2\n").ToString());
        Assert.Equal((0, FaultCode.FileTooLarge), (over.Good.Count, Assert.Single(over.Faults).Code));
    }

    [Fact]
    public void Faults_are_all_counted_and_the_first_are_listed()
    {
        ObservationImport import = Read("time,pumpFlowLPerMin\n" + string.Concat(Enumerable.Repeat("x,y\n", 2000)));
        Assert.Equal((4000, ObservationImport.MostFaults), (import.FaultCount, import.Faults.Count));
    }

    [Fact]
    public void The_same_bytes_have_the_same_hash_and_a_row_becomes_an_event_that_the_record_takes()
    {
        byte[] bytes = Encoding.UTF8.GetBytes("time,pumpFlowLPerMin\n2031-02-03T04:05Z,4\n");
        ObservationImport import = ObservationCsv.Read(bytes, "a\u202Eb.csv");
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), import.FileSha256);
        Assert.Equal("a?b.csv", import.FileName);
        Observed happened = import.EventOf(import.Good[0]);
        Assert.Equal((1, 2), (happened.Import!.Rows, happened.Import.Line));
        Assert.NotEmpty(CourseEventJson.Write(happened).ToArray());
    }

    [Fact]
    public void Every_table_of_good_values_comes_back_with_either_separator() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[-400, 100], Gen.Int[0, 1_000_000]).Array[1, 30].Select(Gen.Bool).Sample(static (rows, semicolon) =>
        {
            string separator = semicolon ? ";" : ",";
            string Number(double value) => Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture).Replace('.', semicolon ? ',' : '.');
            DateTimeOffset At(int seconds) => new DateTimeOffset(2031, 2, 3, 4, 5, 6, TimeSpan.FromHours(1)).AddSeconds(seconds);
            string text = string.Concat(rows.Select(r => $"{At(r.Item3).ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture)}{separator}{Number(r.Item1)}{separator}{Number(r.Item2)}\r\n"));
            ObservationImport import = Read($"time{separator}pumpFlowLPerMin{separator}inletPressureMmHg\r\n{text}");
            Assert.Equal(0, import.FaultCount);
            Assert.Equal(rows.Select(r => (At(r.Item3), Math.Round(r.Item1, 3), Math.Round(r.Item2, 3))), import.Good.Select(static g => (g.At, g.Readings[0].Value, g.Readings[1].Value)));
        }, iter: 200);

    [Fact]
    public void Whatever_bytes_come_in_there_is_an_answer_and_every_good_row_can_be_written_down() =>
        Gen.OneOf(
            Gen.Byte.Array[0, 400],
            Gen.String[Gen.Char["time,;\"\n\r=+-@0123456789.TZ:pumFlowLPerMin "], 0, 400].Select(Encoding.UTF8.GetBytes),
            Gen.Select(Gen.Int[0, 120], Gen.Byte).Select(static (at, letter) =>
            {
                byte[] bytes = Encoding.UTF8.GetBytes("time,pumpFlowLPerMin,inletPressureMmHg\n2031-02-03T04:05:06+01:00,4.25,-80\n2031-02-03T03:06Z,,-85.5\n2031-02-03T03:07Z,\"4\",-85.5\n");
                bytes[at] = letter;
                return bytes;
            })).Sample(static bytes =>
        {
            ObservationImport import = ObservationCsv.Read(bytes, "fuzz");
            Assert.All(import.Good, row => Assert.NotEmpty(CourseEventJson.Write(import.EventOf(row)).ToArray()));
            Assert.All(import.Faults, static f => Assert.DoesNotMatch("^[=+@]", f.Value));
        }, iter: 1500);

    private static ObservationImport Read(string text, TimeSpan? offset = null) => ObservationCsv.Read(Encoding.UTF8.GetBytes(text), "a.csv", offset);
}
