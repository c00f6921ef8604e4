using Cavaxis.Bedside.Exports;
using CsCheck;
using CsvHelper;

namespace Cavaxis.Bedside.Tests.Exports;

public class CsvTextTests
{
    private const string Special = ",\"\r\nä=\t＝+-@|%";

    private static readonly Gen<string> Words = Gen.Int[0, 40].Select(static i => i < Special.Length ? Special[i] : (char)(' ' + (i * 2))).Array[0, 12].Select(static letters => new string(letters));

    [Fact]
    public void Any_table_is_read_back_by_another_library() => Gen.Select(Words.Array[3], Words.Array[3].Array[0, 8]).Sample((header, rows) =>
    {
        string[][] read = Read(CsvText.Write(header, rows));
        return read.Length == rows.Length + 1 && read.Skip(1).Zip(rows).All(static pair => pair.First.Zip(pair.Second).All(static f => f.First == f.Second || f.First == "'" + f.Second));
    });

    [Fact]
    public void No_field_begins_as_a_formula() => Words.Sample(static text =>
    {
        string field = Read(CsvText.Write(["a", "b"], [[text, 1.5]]))[1][0].TrimStart(' ');
        return field.Length == 0 || !"=+-@\t\r\n|%＝＋－＠".Contains(field[0], StringComparison.Ordinal);
    });

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("  =HYPERLINK(1)", "'  =HYPERLINK(1)")]
    [InlineData("@SUM", "'@SUM")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("say \"no\", twice", "\"say \"\"no\"\", twice\"")]
    public void Formulas_and_quotes_in_texts_are_guarded(string text, string field) => Assert.Equal($"a\r\n{field}\r\n", CsvText.Write(["a"], [[text]]));

    [Fact]
    public void Numbers_stay_numbers_and_what_is_unknown_stays_empty()
    {
        string csv = CsvText.Write(["a (mmHg)", "b", "c", "d", "e"], [[-80.5, null, true, 3L, new DateTimeOffset(2031, 2, 3, 4, 5, 6, TimeSpan.Zero)], [double.NaN, "", false, 7, null]]);
        Assert.Equal("a (mmHg),b,c,d,e\r\n-80.5,,yes,3,2031-02-03T04:05:06Z\r\n,,no,7,\r\n", csv);
        Assert.Throws<ArgumentException>(() => CsvText.Write(["a"], [["x", "y"]]));
    }

    [Fact]
    public void A_programme_is_one_line_a_patient_with_units_in_the_header()
    {
        DateTimeOffset from = new(2031, 2, 3, 4, 0, 0, TimeSpan.Zero);
        string[][] read = Read(ProgrammeCsv.Write([new("p1", "veno-venous", from, from.AddHours(30.5), 2, 1, null, true, ["limb ischaemia", "=cmd"], null)]));
        Assert.Equal("support (h)", read[0][4]);
        Assert.Equal(["p1", "veno-venous", "2031-02-03T04:00:00Z", "2031-02-04T10:30:00Z", "30.5", "2", "1", "", "yes", "limb ischaemia; =cmd", ""], read[1]);
    }

    private static string[][] Read(string csv)
    {
        using CsvReader reader = CsvReader.FromText(csv, new CsvReaderOptions
        {
            HasHeader = false,
            Separator = ',',
            MalformedData = CsvMalformedDataHandling.Throw,
            SkipEmptyLines = false,
            TrimWhitespace = false,
        });
        List<string[]> rows = [];
        while (reader.Read())
        {
            rows.Add(reader.Current.ToArray());
        }

        return [.. rows];
    }
}
