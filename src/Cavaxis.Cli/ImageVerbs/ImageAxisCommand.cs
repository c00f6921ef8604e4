using System.Globalization;
using Cavaxis.Anatomy.Space;
using Cavaxis.Bedside.Images;
using Cavaxis.Cli.Commands;
using Cavaxis.Cli.Output;
using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Series;
using Cavaxis.Imaging.Tomography;
using Cavaxis.Planning.Plans;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.ImageVerbs;

/// <summary><c>image axis</c>: centreline, wall, junctions and angles of the caval veins in a scan, and the case with them.</summary>
/// <param name="output">Where results go.</param>
public sealed class ImageAxisCommand(CommandOutput output) : AsyncCommand<ImageAxisSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, ImageAxisSettings settings, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(settings);
        if (settings.Case is null != settings.Out is null)
        {
            throw OptionNumbers.Refused("--case and --out", settings.Case is null ? "--out alone" : "--case alone", "both or none", "Name the case to start from and the new one.");
        }

        ScanSeries series;
        DicomReader reader = new();
        await using (reader.ConfigureAwait(false))
        {
            series = await new SeriesReader(reader).ReadAsync(settings.Folder, cancellationToken).ConfigureAwait(false);
        }

        (AxisTrace? trace, TraceFailure? failure) = Traced(settings, series);
        IReadOnlyList<string> pictures = settings.Pictures is string folder && trace is not null ? AxisPictureFiles.Write(folder, series.Volume, trace) : [];
        AxisSheet sheet = Sheet(series, trace, failure, settings.Seeds.Length == 0, pictures);
        if (settings.Case is string from && settings.Out is string to && sheet.Measurements.Count > 0)
        {
            InputFile.WriteWhole(to, AxisCase.With(from, sheet.Measurements));
        }

        if (settings.Json)
        {
            output.Json(sheet);
        }
        else
        {
            Write(sheet);
        }

        return (int)(sheet.Failure is null ? ExitCode.Done : ExitCode.StopFound);
    }

    private static (AxisTrace? Trace, TraceFailure? Failure) Traced(ImageAxisSettings settings, ScanSeries series)
    {
        ConfirmedLandmark[] confirmed = [.. settings.Confirm.Select(text => AxisPlaces.Landmark(text, series.Volume, settings.Voxels))];
        if (settings.Seeds.Length > 0)
        {
            TraceRequest request = new([.. settings.Seeds.Select(text => AxisPlaces.Place("--seed", text, series.Volume, settings.Voxels))], confirmed);
            AxisTrace trace = AxisTracer.Trace(series.Volume, request);
            return (trace, trace.Failure);
        }

        (IReadOnlyList<Vector3D> seeds, TraceFailure? failure) = SeedSearch.Find(series.Volume);
        if (failure is not null)
        {
            return (null, failure);
        }

        AxisTrace found = AxisTracer.Trace(series.Volume, new TraceRequest(seeds, confirmed));
        return (found, found.Failure);
    }

    private static AxisSheet Sheet(ScanSeries series, AxisTrace? trace, TraceFailure? failure, bool byProgram, IReadOnlyList<string> pictures) => new(
        series.Sha256,
        byProgram,
        failure,
        trace?.Course?.LengthMm,
        trace?.Axis?.Line.LengthMm,
        trace?.Axis?.DiameterSdMm,
        [.. (trace?.Axis?.Landmarks ?? []).Select(AxisLandmarkRow.Of)],
        trace?.Axis?.Directions is CavalDirections directions ? AxisAngleRow.Of(directions) : null,
        [.. (trace?.Axis?.Sections ?? []).Select(static s => new AxisDiameterRow(s.ArcMm, s.DiameterMm, s.OpenShare))],
        trace?.Axis is TracedAxis axis ? CaseEntries.Axis(axis) : [],
        trace?.Quality is { RepeatMm: < 1e6 } quality ? quality : null,
        trace?.Cautions ?? [],
        pictures,
        series.Cautions);

    private static string Number(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    private void Write(AxisSheet sheet)
    {
        ImageText.Cautions(output, sheet.Cautions);
        if (sheet.Failure is TraceFailure failure)
        {
            output.Wrapped(string.Empty, $"No axis ({PlainWords.FromName(failure.Fault.ToString())}). {failure.Words}");
        }

        if (sheet.LengthMm is double length)
        {
            output.Line($"Centreline of {Number(length)} mm, {sheet.Diameters.Count} sections, each diameter ± {Number(sheet.DiameterSdMm ?? 0)} mm");
            if (sheet.SeedsFoundByProgram)
            {
                output.Wrapped("  ! ", "No seed was given: the one bright column was followed. Look at the pictures and say that it is the vein.");
            }
        }

        foreach (TraceCaution caution in sheet.TraceCautions)
        {
            output.Wrapped("  ! ", $"{PlainWords.FromName(caution.Kind.ToString())}: {caution.Words}");
        }

        foreach (AxisLandmarkRow row in sheet.Landmarks)
        {
            string place = row.ArcMm is double arc ? $"{Number(arc)} ± {Number(row.SdMm ?? 0)} mm along the line, at {Number(row.XMm ?? 0)}, {Number(row.YMm ?? 0)}, {Number(row.ZMm ?? 0)}; " : string.Empty;
            output.Wrapped("  ", $"{PlainWords.FromName(row.Landmark.ToString())}: {PlainWords.FromName(row.Origin.ToString())}; {place}{row.Reason}");
        }

        foreach (Planning.Case.AxisEntry entry in sheet.Measurements)
        {
            output.Line($"  {PlainWords.FromName(entry.Dimension.ToString())}: {Number(entry.Value)} ± {Number(entry.Sd ?? 0)}");
        }

        if (sheet.Pictures.Count > 0)
        {
            output.Line($"{sheet.Pictures.Count} pictures written");
        }

        if (sheet.LengthMm is not null)
        {
            output.Wrapped(string.Empty, "Proposed landmarks are proposals: look at each on the pictures and confirm it with --confirm. Errors are those of reading this scan; breath and filling change veins by more.");
        }
    }
}
