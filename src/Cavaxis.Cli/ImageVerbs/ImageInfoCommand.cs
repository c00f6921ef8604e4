using Cavaxis.Cli.Output;
using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Series;
using Cavaxis.Quantities.Faults;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary><c>image info</c>: what an image or a folder of slices is. Nothing of the person is shown.</summary>
/// <param name="output">Where results go.</param>
public sealed class ImageInfoCommand(CommandOutput output) : AsyncCommand<ImageInfoSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, ImageInfoSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        await using DicomReader reader = new();
        ImageInfoSheet sheet = Directory.Exists(settings.ImagePath)
            ? await FolderAsync(reader, settings.ImagePath, cancellationToken)
            : new ImageInfoSheet([ImageSheet.Of(await reader.ReadAsync(settings.ImagePath, cancellationToken))], null, []);
        if (settings.Json)
        {
            output.Json(sheet);
        }
        else
        {
            ImageText.Write(output, sheet);
        }

        return (int)(sheet.Series is { Fault: not null } ? ExitCode.StopFound : ExitCode.Done);
    }

    private static async Task<ImageInfoSheet> FolderAsync(DicomReader reader, string folder, CancellationToken cancel)
    {
        List<ImageSheet> images = [];
        List<LeftOutFile> leftOut = [];
        bool hasSlices = false;
        foreach (string path in ImageFolder.Files(folder))
        {
            try
            {
                DicomFile file = await reader.ReadAsync(path, cancel);
                if (file.Header.Kind == ImageKind.TomographySlice)
                {
                    hasSlices = true;
                }
                else
                {
                    images.Add(ImageSheet.Of(file));
                }
            }
            catch (InputFaultException fault) when (fault.Faults[0].Code != FaultCode.NotFound)
            {
                leftOut.Add(LeftOutFile.Of(path, fault));
            }
        }

        return new ImageInfoSheet(images, hasSlices ? await SeriesAsync(reader, folder, cancel) : null, leftOut);
    }

    private static async Task<SeriesSheet> SeriesAsync(DicomReader reader, string folder, CancellationToken cancel)
    {
        try
        {
            return SeriesSheet.Of(await new SeriesReader(reader).ReadAsync(folder, cancel));
        }
        catch (InputFaultException fault)
        {
            return SeriesSheet.None(fault.Faults[0]);
        }
    }
}
