using System.Globalization;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Cli.RecordVerbs;
using Cavaxis.Dicom.Cautions;
using Cavaxis.Dicom.Identity;
using Cavaxis.Dicom.Reading;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary><c>image clean</c>: images anew without who it was.</summary>
/// <param name="output">Where results go.</param>
public sealed class ImageCleanCommand(CommandOutput output) : AsyncCommand<ImageCleanSettings>
{
    private const string Profile = "DICOM PS3.15 Basic Application Confidentiality Profile";
    private const int LongestKey = 65_536;

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, ImageCleanSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        string target = VerbText.Given(settings.Out, "--out");
        PixelMask? mask = MaskOption.Read(settings.Mask);
        IdentityKey key = settings.Key is null ? IdentityKey.Forgotten() : new IdentityKey(InputFile.ReadAll(settings.Key, LongestKey));
        await using DicomReader reader = new();
        DicomCleaner cleaner = new(reader, key);
        List<CleanedRow> rows = [];
        List<LeftOutFile> leftOut = [];
        List<ImageCaution> cautions = [];
        if (Directory.Exists(settings.ImagePath))
        {
            string[] files = ImageFolder.Files(settings.ImagePath);
            NewFolder(target);
            foreach (string file in files)
            {
                try
                {
                    // The old name may tell who it was: the new one is a number in the old order.
                    string name = string.Create(CultureInfo.InvariantCulture, $"{rows.Count + 1:D4}.dcm");
                    await OneAsync(reader, cleaner, file, Path.Combine(target, name), mask, rows, cautions, cancellationToken);
                }
                catch (InputFaultException fault) when (fault.Faults[0].Code != FaultCode.NotFound)
                {
                    leftOut.Add(LeftOutFile.Of(file, fault));
                }
            }
        }
        else
        {
            await OneAsync(reader, cleaner, settings.ImagePath, target, mask, rows, cautions, cancellationToken);
        }

        CleanedSheet sheet = new(Profile, settings.Key is not null, rows, leftOut, [.. cautions.Distinct()]);
        if (settings.Json)
        {
            output.Json(sheet);
        }
        else
        {
            Write(sheet);
        }

        return (int)(leftOut.Count > 0 ? ExitCode.StopFound : ExitCode.Done);
    }

    private static async Task OneAsync(
        DicomReader reader, DicomCleaner cleaner, string path, string target, PixelMask? mask, List<CleanedRow> rows, List<ImageCaution> cautions, CancellationToken cancel)
    {
        CleanedFile done = await cleaner.CleanAsync(await reader.ReadAsync(path, cancel), target, mask, cancel);
        rows.Add(new CleanedRow(
            InputFault.Shown(Path.GetFileName(path)), done.SourceSha256, InputFault.Shown(Path.GetFileName(done.Path)), done.Sha256, done.Person, done.Removed, done.Emptied, done.Replaced, done.MaskedPixels));
        cautions.AddRange(done.Cautions);
    }

    private static void NewFolder(string target)
    {
        try
        {
            if (Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any())
            {
                throw new InputFaultException(new InputFault(FaultCode.BadOption, "--out", InputFault.Shown(target), "a new or empty folder", "Choose another folder; no file is written over."));
            }

            Directory.CreateDirectory(target);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new InputFaultException(new InputFault(FaultCode.BadOption, "--out", InputFault.Shown(target), "a folder that can be made", "Choose another folder."));
        }
    }

    private void Write(CleanedSheet sheet)
    {
        foreach (CleanedRow row in sheet.Files)
        {
            string person = row.Person.Length == 0 ? "no Patient ID was stated" : $"the person is {row.Person}";
            string masked = row.MaskedPixels > 0 ? string.Create(CultureInfo.InvariantCulture, $", {row.MaskedPixels} pixels of each frame blackened") : string.Empty;
            output.Wrapped(string.Empty, string.Create(
                CultureInfo.InvariantCulture, $"{row.File} → {row.Out}: {row.Removed} attributes removed, {row.Emptied} emptied, {row.Replaced} identifiers replaced{masked}; {person}."));
        }

        ImageText.LeftOut(output, sheet.LeftOut);
        ImageText.Cautions(output, sheet.Cautions);
        output.Wrapped(string.Empty, sheet.LeadsBack
            ? "Only who holds the key can tell who it was: keep it apart from the images."
            : "No key was given: nobody can tell who it was, and the next run gives other hashes.");
    }
}
