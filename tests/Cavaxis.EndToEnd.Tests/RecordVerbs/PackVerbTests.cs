using System.Runtime.Versioning;
using System.Text.Json;
using Cavaxis.Cli;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.RecordVerbs;

/// <summary>A second opinion through the command line: out of one record, to someone without an account, and back.</summary>
public sealed class PackVerbTests(RecordFolder record) : IClassFixture<RecordFolder>
{
    private const string Words = "gravel hammock under seven quiet boats";
    private const string Question = "Is it recirculation?";

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void A_question_goes_out_is_answered_without_an_account_and_comes_back_once()
    {
        (string pack, string answer, string page) = (record["a.pack"], record["a.answer"], record["a.html"]);
        (ExitCode looked, string preview, _) = record.As("cleo", "pack", "make", record.Patient, "--question", Question);
        Assert.True(looked == ExitCode.Done && preview.Contains("Nothing was written", StringComparison.Ordinal), preview);
        (ExitCode made, string json, string err) = record.As("cleo", [Words], "pack", "make", record.Patient, "--question", Question, "--out", pack, "--json");
        Assert.True(made == ExitCode.Done, json + err);
        using JsonDocument told = JsonDocument.Parse(json);
        Assert.Equal(64, told.RootElement.GetProperty("packSha256").GetString()!.Length);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(pack));

        (ExitCode opened, string text, _) = RecordFolder.Run([Words], "pack", "open", pack, "--html", page);
        Assert.True(opened == ExitCode.Done && text.Contains(Question, StringComparison.Ordinal), text);
        Assert.DoesNotContain(record.Patient, text + File.ReadAllText(page), StringComparison.Ordinal);
        Assert.Equal(ExitCode.Done, RecordFolder.Run([Words], "pack", "answer", pack, "--text", "Pull it back 2 cm.", "--by", "night desk (invented)", "--out", answer).Code);
        Assert.Equal(ExitCode.Done, record.As("lena", [Words], "pack", "accept", answer).Code);
        Assert.Contains("Pull it back 2 cm.", record.As("rita", "patient", "show", record.Patient, "--json").Out, StringComparison.Ordinal);
        Assert.Equal("answeredAlready", RecordFolder.CodeOf(record.As("cleo", [Words], "pack", "accept", answer, "--json").Out));
        Assert.Equal("otherPack", RecordFolder.CodeOf(record.As("sven", [Words], "pack", "accept", answer, "--json").Out));
        Assert.Equal("notAPack", RecordFolder.CodeOf(record.As("cleo", [Words], "pack", "accept", pack, "--json").Out));
    }

    [Fact]
    public void Making_and_taking_in_need_the_role_and_a_foreign_patient_is_none()
    {
        foreach ((string name, string code) in new[] { ("rita", "notAllowed"), ("ada", "notAllowed"), ("sven", "notThere"), ("oda", "notThere") })
        {
            Assert.Equal(code, RecordFolder.CodeOf(record.As(name, [Words], "pack", "make", record.Patient, "--question", Question, "--out", record["no.pack"], "--json").Out));
        }

        foreach (string name in new[] { "rita", "ada", "oda" })
        {
            Assert.Equal("notAllowed", RecordFolder.CodeOf(record.As(name, [Words], "pack", "accept", record["none"], "--json").Out));
        }

        string none = new('0', 32);
        Assert.Equal(
            record.As("lena", "pack", "make", none, "--question", Question).Err,
            record.As("lena", "pack", "make", record.Foreign, "--question", Question).Err.Replace(record.Foreign, none, StringComparison.Ordinal));
        Assert.False(File.Exists(record["no.pack"]));
    }

    [Fact]
    public void Each_spoiled_pack_gives_one_typed_fault_and_no_passphrase_is_repeated()
    {
        string pack = record["b.pack"];
        Assert.Equal(ExitCode.Done, record.As("cleo", [Words], "pack", "make", record.Patient, "--question", Question, "--out", pack).Code);
        byte[] good = File.ReadAllBytes(pack);
        byte[] flipped = [.. good];
        flipped[^9] ^= 4;
        (string Code, byte[] Bytes, string Passphrase)[] cases =
        [
            ("notOpened", good, Words + "x"), ("notOpened", flipped, Words), ("wrongLength", good[..^1], Words), ("wrongLength", [.. good, 7], Words), ("notAPack", [1, 2, 3], Words), ("notAPack", [], Words),
            ("unsupportedVersion", [.. good[..9], 9, .. good[10..]], Words), ("costOutOfBounds", [.. good[..12], 0x7F, .. good[13..]], Words),
        ];
        foreach ((string code, byte[] bytes, string passphrase) in cases)
        {
            string path = record[Guid.NewGuid().ToString("N")];
            File.WriteAllBytes(path, bytes);
            (ExitCode ended, string json, string err) = RecordFolder.Run([passphrase], "pack", "open", path, "--json");
            Assert.Equal((ExitCode.InputError, code, string.Empty), (ended, RecordFolder.CodeOf(json), err));
            Assert.DoesNotContain("hammock", json, StringComparison.Ordinal);
        }

        Assert.Equal("wrongLength", RecordFolder.CodeOf(record.As("cleo", ["short one"], "pack", "make", record.Patient, "--question", Question, "--out", record["c.pack"], "--json").Out));
        Assert.False(File.Exists(record["c.pack"]));
        Assert.Equal("unreadableFile", RecordFolder.CodeOf(record.As("cleo", [Words], "pack", "make", record.Patient, "--question", Question, "--out", pack, "--json").Out));
        Assert.Equal(good, File.ReadAllBytes(pack));
    }

    [Fact]
    public void The_real_program_opens_a_pack_in_bounded_memory_and_refuses_a_hostile_cost_at_once()
    {
        string pack = record["d.pack"];
        Assert.Equal(ExitCode.Done, record.As("cleo", [Words], "pack", "make", record.Patient, "--question", Question, "--out", pack).Code);
        Dictionary<string, string> words = new() { ["WORD"] = Words };
        Ended opened = CavaxisProcess.Shell($"printf '%s\\n' \"$WORD\" | dotnet $CAVAXIS pack open '{pack}' --json", words);
        Assert.True(opened.ExitCode == 0 && opened.Out.Contains(Question, StringComparison.Ordinal), opened.Err + opened.Out);
        byte[] hostile = File.ReadAllBytes(pack);
        hostile[12] = 0x7F;
        File.WriteAllBytes(record["e.pack"], hostile);
        Ended refused = CavaxisProcess.Shell($"printf '%s\\n' \"$WORD\" | dotnet $CAVAXIS pack open '{record["e.pack"]}' --json", words);
        Assert.Equal("costOutOfBounds", RecordFolder.CodeOf(refused.Out));
    }
}
