using System.Security.Cryptography;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Events;

namespace Cavaxis.Bedside.Tests.ImageKeeping;

public sealed class ImageFolderTests : IDisposable
{
    private static readonly Identifier One = Identifier.Of("one");
    private static readonly Identifier Other = Identifier.Of("other");
    private readonly string place = Directory.CreateTempSubdirectory("cavaxis-images-").FullName;

    public void Dispose() => Directory.Delete(place, recursive: true);

    [Fact]
    public void An_image_is_found_by_its_own_hash_for_its_own_patient_only()
    {
        ImageFolder folder = new(Path.Combine(place, "images"));
        byte[] bytes = [1, 2, 3];
        KeptImage kept = folder.Keep(One, Files(bytes));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), kept.Id);
        Assert.Equal(bytes, File.ReadAllBytes(Assert.Single(folder.Find(One, kept.Id)!.Files)));
        Assert.Null(folder.Find(Other, kept.Id));
        Assert.False(kept.IsSeries);
    }

    [Theory]
    [InlineData("")]
    [InlineData("../one")]
    [InlineData("../../../../../../../../etc/aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public void What_is_no_hash_finds_nothing(string id) => Assert.Null(new ImageFolder(place).Find(One, id));

    [Fact]
    public void A_series_keeps_its_order_and_is_another_in_another_order()
    {
        ImageFolder folder = new(place);
        KeptImage kept = folder.Keep(One, Files(new byte[] { 1 }, new byte[] { 2 }, new byte[] { 3 }));
        Assert.Equal([1, 2, 3], kept.Files.Select(static f => File.ReadAllBytes(f)[0]));
        Assert.NotEqual(kept.Id, folder.Keep(One, Files(new byte[] { 2 }, new byte[] { 1 }, new byte[] { 3 })).Id);
        Assert.Equal(kept.Id, folder.Keep(One, Files(new byte[] { 1 }, new byte[] { 2 }, new byte[] { 3 })).Id);
        Assert.True(kept.IsSeries);
    }

    [Fact]
    public void What_was_altered_or_lost_on_the_disk_is_not_whole()
    {
        ImageFolder folder = new(place);
        KeptImage kept = folder.Keep(One, Files(new byte[] { 1 }, new byte[] { 2 }));
        Assert.True(ImageFolder.IsWhole(kept));
        File.WriteAllBytes(kept.Files[1], [9]);
        Assert.False(ImageFolder.IsWhole(kept));
        File.Delete(kept.Files[1]);
        Assert.False(ImageFolder.IsWhole(folder.Find(One, kept.Id)!));
        Assert.False(ImageFolder.IsWhole(kept));
    }

    [Fact]
    public void A_second_look_hashes_nothing_and_a_change_is_seen_all_the_same()
    {
        ImageFolder folder = new(Path.Combine(place, "images"));
        KeptImage kept = folder.Keep(One, Files([1], [2]));
        Assert.True(folder.IsStillWhole(kept));
        DateTime written = File.GetLastWriteTimeUtc(kept.Files[1]);
        File.WriteAllBytes(kept.Files[1], [9]);
        File.SetLastWriteTimeUtc(kept.Files[1], written);

        // Length and time are those of the first look: this is the price of not hashing again, and only of that.
        Assert.True(folder.IsStillWhole(kept));
        Assert.False(ImageFolder.IsWhole(kept));
        File.SetLastWriteTimeUtc(kept.Files[1], written.AddSeconds(1));
        Assert.False(folder.IsStillWhole(kept));
        Assert.False(folder.IsStillWhole(kept));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_named_and_nothing_is_left_there()
    {
        string file = Path.Combine(place, "file");
        File.WriteAllText(file, "no folder");
        Assert.Equal("not writable", Assert.Throws<InputFaultException>(() => new ImageFolder(file).Keep(One, Files(new byte[] { 1 }))).Faults[0].Value);
        Assert.Equal([file], Directory.GetFiles(place));
        Assert.Equal("image.files", Assert.Throws<InputFaultException>(() => new ImageFolder(place).Keep(One, [])).Faults[0].Field);
    }

    private string[] Files(params byte[][] contents) => [.. contents.Select(bytes =>
    {
        string path = Path.Combine(Directory.CreateDirectory(Path.Combine(place, "in")).FullName, $"{Guid.NewGuid():N}.dcm");
        File.WriteAllBytes(path, bytes);
        return path;
    })];
}
