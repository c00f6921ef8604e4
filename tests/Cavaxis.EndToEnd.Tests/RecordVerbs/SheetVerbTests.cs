using System.Runtime.Versioning;
using System.Text.Json;
using Cavaxis.Bedside.Fhir;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;
using UglyToad.PdfPig;

namespace Cavaxis.EndToEnd.Tests.RecordVerbs;

/// <summary>Sheets, reports and exports by the command line, on an empty course: what stands in them is tested where they are made.</summary>
[SupportedOSPlatform("linux")]
public sealed class SheetVerbTests(RecordFolder record) : IClassFixture<RecordFolder>
{
    private const string Before = "what was there before";

    [Theory]
    [InlineData("handover", true)]
    [InlineData("report", false)]
    public void A_sheet_is_written_as_paper_and_as_a_page(string verb, bool onePage)
    {
        string pdf = record[$"{verb}.pdf"];
        (ExitCode code, string json, string err) = record.As("rita", "patient", verb, record.Patient, "--report", pdf, "--json");
        Assert.True(code == ExitCode.Done, json + err);
        using JsonDocument told = JsonDocument.Parse(json);
        Assert.Equal(pdf, told.RootElement.GetProperty("file").GetString());
        Assert.Equal(new FileInfo(pdf).Length, told.RootElement.GetProperty("bytes").GetInt64());
        Assert.Equal(1, told.RootElement.GetProperty("count").GetInt64());
        Assert.Equal(0, told.RootElement.GetProperty("unread").GetInt64());
        using (PdfDocument paper = PdfDocument.Open(pdf))
        {
            Assert.True(onePage ? paper.NumberOfPages == 1 : paper.NumberOfPages >= 1);
            Assert.Contains(record.Patient, paper.GetPage(1).Text, StringComparison.Ordinal);
        }

        string html = record[$"{verb}.html"];
        (code, string text, err) = record.As("rita", "patient", verb, record.Patient, "--report", html);
        Assert.True(code == ExitCode.Done, text + err);
        Assert.Contains("keep it as you keep the record", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        string page = File.ReadAllText(html);
        Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
        Assert.Contains(record.Patient, page, StringComparison.Ordinal);
        Assert.Contains("No certified medical device", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bundle_is_one_that_the_standard_takes()
    {
        string path = record["bundle.json"];
        (ExitCode code, string json, string err) = record.As("cleo", "patient", "fhir", record.Patient, "--to", path, "--json");
        Assert.True(code == ExitCode.Done, json + err);
        Hl7.Fhir.Model.Bundle bundle = FhirJson.Read(File.ReadAllText(path));
        Hl7.Fhir.Model.Patient patient = Assert.IsType<Hl7.Fhir.Model.Patient>(Assert.Single(bundle.Entry).Resource);
        Assert.Equal(record.Patient, Assert.Single(patient.Identifier).Value);
    }

    [Fact]
    public void The_table_of_a_programme_has_its_patients_and_no_others()
    {
        string path = record["programme.csv"];
        (ExitCode code, string json, string err) = record.As("lena", "programme", "csv", "--to", path, "--json");
        Assert.True(code == ExitCode.Done, json + err);
        byte[] bytes = File.ReadAllBytes(path);
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        string[] lines = File.ReadAllText(path).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.StartsWith("patient,configuration,", lines[0].TrimStart('\uFEFF'), StringComparison.Ordinal);
        Assert.Equal(record.Patient, Assert.Single(lines[1..]).Split(',')[0]);
        Assert.DoesNotContain(record.Foreign, File.ReadAllText(path), StringComparison.Ordinal);

        (code, json, _) = record.As("lena", "programme", "csv", "--programme", "south", "--to", record["south.csv"], "--json");
        Assert.Equal(ExitCode.InputError, code);
        Assert.Equal("notThere", RecordFolder.CodeOf(json));
        Assert.False(File.Exists(record["south.csv"]));
    }

    [Theory]
    [InlineData("patient handover PATIENT --report FILE.pdf")]
    [InlineData("patient report PATIENT --report FILE.html")]
    [InlineData("patient fhir PATIENT --to FILE.json")]
    public void A_patient_of_another_programme_looks_like_none_and_nothing_is_written(string verb)
    {
        (ExitCode Code, string Text) Ask(string patient)
        {
            string path = record["asked-" + verb.Split(' ')[1]];
            (ExitCode code, string text, _) = record.As("lena", [.. verb.Split(' ').Select(w => w.Replace("PATIENT", patient, StringComparison.Ordinal).Replace("FILE", path, StringComparison.Ordinal)), "--json"]);
            Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(path)!, Path.GetFileName(path) + "*"));
            return (code, text.Replace(patient, "(asked)", StringComparison.Ordinal));
        }

        (ExitCode code, string text) = Ask(record.Foreign);
        Assert.Equal(ExitCode.InputError, code);
        Assert.Equal("notThere", RecordFolder.CodeOf(text));
        Assert.Equal(Ask(new string('0', 32)), (code, text));
    }

    [Theory]
    [InlineData("")]
    [InlineData("sheet.doc")]
    [InlineData("sheet")]
    public void Another_format_is_refused_before_anything_is_read(string name)
    {
        (ExitCode code, string json, _) = record.As("rita", "patient", "handover", record.Patient, "--report", name.Length == 0 ? name : record[name], "--json");
        Assert.Equal(ExitCode.InputError, code);
        Assert.Contains(RecordFolder.CodeOf(json), new[] { "badOption", "missingField" });
    }

    [Theory]
    [InlineData("patient handover PATIENT --report no-such-folder/FILE.pdf")]
    [InlineData("patient fhir PATIENT --to no-such-folder/FILE.json")]
    [InlineData("programme csv --to no-such-folder/FILE.csv")]
    public void A_place_that_cannot_be_written_to_is_refused_by_name(string verb)
    {
        (ExitCode code, string json, _) = record.As("lena", [.. verb.Split(' ').Select(w => w.Replace("PATIENT", record.Patient, StringComparison.Ordinal)), "--json"]);
        Assert.Equal(ExitCode.InputError, code);
        Assert.Equal("unreadableFile", RecordFolder.CodeOf(json));
    }

    // A limit on the size of written files stands for the full disk: writing breaks off in the middle. The store is on the same disk and needs room for its audit.
    [Fact]
    public void A_disk_that_fills_up_leaves_the_file_of_before()
    {
        using WorkFolder work = new();
        string target = work.Write("report.pdf", Before);
        File.WriteAllText(work["password"], RecordFolder.PasswordOf("rita"));
        File.SetUnixFileMode(work["password"], UnixFileMode.UserRead | UnixFileMode.UserWrite);
        Ended ended = CavaxisProcess.Shell(
            "dotnet \"$CAVAXIS\" patient handover \"$PATIENT\" --report \"$WHOLE\" --store \"$STORE\" --as rita --password-file \"$PASSWORD\" --json && kilo=$(( $(stat -c %s \"$WHOLE\") / 1024 / 2 )) && trap '' XFSZ && ulimit -f $kilo && exec dotnet \"$CAVAXIS\" patient handover \"$PATIENT\" --report \"$TARGET\" --store \"$STORE\" --as rita --password-file \"$PASSWORD\" --json",
            new Dictionary<string, string> { ["PATIENT"] = record.Patient, ["WHOLE"] = work["whole.pdf"], ["TARGET"] = target, ["STORE"] = record.Store, ["PASSWORD"] = work["password"], ["DOTNET_EnableWriteXorExecute"] = "0" });
        Assert.NotEqual((int)ExitCode.Done, ended.ExitCode);
        Assert.Equal(Before, File.ReadAllText(target));
        Assert.Equal(["password", "report.pdf", "whole.pdf"], Directory.GetFiles(work.Folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task Killed_in_the_middle_of_writing_it_leaves_the_file_of_before()
    {
        using WorkFolder work = new();
        string target = work.Write("report.html", Before);
        File.WriteAllText(work["password"], RecordFolder.PasswordOf("rita"));
        File.SetUnixFileMode(work["password"], UnixFileMode.UserRead | UnixFileMode.UserWrite);
        (int code, byte[] begun) = await HalfWritten.KillAsync(
            "patient report \"$PATIENT\" --report \"$TARGET\" --store \"$STORE\" --as rita --password-file \"$PASSWORD\"",
            target,
            new Dictionary<string, string> { ["PATIENT"] = record.Patient, ["STORE"] = record.Store, ["PASSWORD"] = work["password"] });
        Assert.Equal("<!DOCTYPE"u8.ToArray(), begun);
        Assert.Equal(137, code);
        Assert.Equal(Before, File.ReadAllText(target));
    }
}
