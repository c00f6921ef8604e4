using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;
using Cavaxis.Bedside.Sealing;

namespace Cavaxis.Bedside.Packs;

/// <summary>Writes and reads the contents of packs and answers. What is read is checked as if a stranger wrote it, which is so.</summary>
public static partial class PackFormat
{
    /// <summary>Name of the format of packs.</summary>
    public const string PackName = "cavaxis second-opinion pack";

    /// <summary>Name of the format of answers.</summary>
    public const string AnswerName = "cavaxis second-opinion answer";

    /// <summary>Version of both.</summary>
    public const int Version = 1;

    /// <summary>Longest question or answer, characters.</summary>
    public const int LongestText = 16_000;

    /// <summary>Longest line, characters.</summary>
    public const int LongestLine = 400;

    private const int MostEntries = 100_000;
    private const int MostAttachments = 20;
    private const long MostMinutes = 60L * 24 * 3650;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        AllowDuplicateProperties = false,
        MaxDepth = 64,
    };

    /// <summary>A new identifier of chance.</summary>
    /// <returns>32 small hexadecimal digits.</returns>
    public static string NewId() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));

    /// <summary>Writes a pack.</summary>
    /// <param name="contents">Its contents.</param>
    /// <param name="passphrase">The passphrase.</param>
    /// <param name="cost">Cost of the key; null for the usual one.</param>
    /// <returns>The file.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The passphrase is not one that is taken.</exception>
    /// <exception cref="SealFaultException">The contents are too large.</exception>
    public static byte[] Write(PackContents contents, string passphrase, SealCost? cost = null) =>
        SealedFile.Seal(SealKind.Pack, JsonSerializer.SerializeToUtf8Bytes(contents, Options), passphrase, cost);

    /// <summary>Writes an answer.</summary>
    /// <param name="contents">Its contents.</param>
    /// <param name="passphrase">The passphrase of the pack.</param>
    /// <param name="cost">Cost of the key; null for the usual one.</param>
    /// <returns>The file.</returns>
    /// <exception cref="Quantities.Faults.InputFaultException">The passphrase is not one that is taken.</exception>
    public static byte[] Write(AnswerContents contents, string passphrase, SealCost? cost = null) =>
        SealedFile.Seal(SealKind.Answer, JsonSerializer.SerializeToUtf8Bytes(contents, Options), passphrase, cost);

    /// <summary>Opens a pack.</summary>
    /// <param name="file">The file.</param>
    /// <param name="passphrase">The passphrase.</param>
    /// <returns>Its contents.</returns>
    /// <exception cref="SealFaultException">It cannot be opened.</exception>
    public static PackContents ReadPack(ReadOnlySpan<byte> file, string passphrase)
    {
        PackContents pack = Parsed<PackContents>(SealedFile.Open(SealKind.Pack, file, passphrase), PackName, static p => (p.Format, p.Version));
        return Id().IsMatch(pack.PackId) && pack.Question.Length <= LongestText && pack.Entries.Count <= MostEntries && pack.Attachments.Count <= MostAttachments
            && pack.Entries.All(static e => e is { Kind.Length: <= 64, Payload: not null } && Math.Abs(e.MinutesFromStart) <= MostMinutes)
            && pack.Attachments.All(static a => a is { Bytes: not null } && IsAttachmentName(a.Name))
            && pack.TakenOut.Count <= MostEntries && pack.TakenOut.All(static t => t is { Place: not null, Why: not null })
            ? pack
            : throw Unreadable();
    }

    /// <summary>Opens an answer.</summary>
    /// <param name="file">The file.</param>
    /// <param name="passphrase">The passphrase.</param>
    /// <returns>Its contents and their SHA-256, the same however often the answer was sealed.</returns>
    /// <exception cref="SealFaultException">It cannot be opened.</exception>
    public static (AnswerContents Answer, string Sha256) ReadAnswer(ReadOnlySpan<byte> file, string passphrase)
    {
        byte[] contents = SealedFile.Open(SealKind.Answer, file, passphrase);
        AnswerContents answer = Parsed<AnswerContents>(contents, AnswerName, static a => (a.Format, a.Version));
        return Id().IsMatch(answer.PackId) && Id().IsMatch(answer.AnswerId) && Hash().IsMatch(answer.PackSha256) && answer.AnsweredBy.Length <= LongestLine && !string.IsNullOrWhiteSpace(answer.Answer) && answer.Answer.Length <= LongestText
            ? (answer, SealedFile.HashOf(contents))
            : throw Unreadable();
    }

    /// <summary>True for a name of an attachment.</summary>
    /// <param name="name">The name.</param>
    /// <returns>Whether it may be one.</returns>
    public static bool IsAttachmentName(string name) => name is not null && AttachmentName().IsMatch(name);

    private static T Parsed<T>(byte[] contents, string format, Func<T, (string, int)> told)
    {
        try
        {
            T parsed = JsonSerializer.Deserialize<T>(contents, Options) ?? throw Unreadable();
            (string name, int version) = told(parsed);
            return name != format ? throw Unreadable()
                : version == Version ? parsed
                : throw new SealFaultException(new SealFault(SealFaultCode.UnsupportedVersion, FormattableString.Invariant($"contents of version {version}"), "version 1", "Open it with the program that made it, or a later one."));
        }
        catch (JsonException)
        {
            throw Unreadable();
        }
    }

    private static SealFaultException Unreadable() => new(new SealFault(
        SealFaultCode.UnreadableContents, "contents that are not of the form", "what this program writes", "Ask for the file again, made with this program."));

    [GeneratedRegex(@"\A[0-9a-f]{32}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Id();

    [GeneratedRegex(@"\A[0-9a-f]{64}\z", RegexOptions.CultureInvariant)]
    private static partial Regex Hash();

    [GeneratedRegex(@"\A[a-z0-9][a-z0-9-]{0,39}\.(png|pdf)\z", RegexOptions.CultureInvariant)]
    private static partial Regex AttachmentName();
}
