using System.Globalization;
using Cavaxis.Bedside.Courses;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Course.Events;
using Cavaxis.Course.Patients;
using Cavaxis.Dicom.Headers;
using Cavaxis.Dicom.Identity;
using Cavaxis.Dicom.Reading;
using Cavaxis.Dicom.Series;
using Cavaxis.Imaging.Frames;
using Cavaxis.Quantities.Faults;
using Cavaxis.Records.Access;
using Cavaxis.Records.Events;
using Cavaxis.Records.Patients;

namespace Cavaxis.Bedside.Images;

/// <summary>
/// Takes images in for a patient and opens them again. What is kept has no identity: the files are written anew by the basic profile before they are kept, and the
/// record refers to them by their hash alone. Only who may write in a patient's record can take images in, only who may read it can see them.
/// </summary>
/// <param name="courses">The courses.</param>
/// <param name="folder">Where images lie.</param>
/// <param name="reader">Reads them.</param>
/// <param name="key">From which replaced identifiers follow.</param>
public sealed class ImageDesk(CourseRecords courses, ImageFolder folder, DicomReader reader, IdentityKey key)
{
    private readonly SeriesCache series = new();

    /// <summary>Takes files in. Slices of tomography that are handed in together are one series; every other file is an image of its own.</summary>
    /// <param name="person">Who.</param>
    /// <param name="patient">Whose, as given.</param>
    /// <param name="paths">The files.</param>
    /// <param name="modality">How they were taken.</param>
    /// <param name="mask">What is blackened; null for nothing.</param>
    /// <param name="cleaned">Told how many files were read and cleaned; null for nothing.</param>
    /// <param name="cancel">Ends it between two files, while nothing is kept yet.</param>
    /// <returns>What became of each, where it was granted.</returns>
    public async Task<PatientAnswer<ImagesTaken>> TakeInAsync(
        Person person, string patient, IReadOnlyList<string> paths, ImagingModality modality, PixelMask? mask, Action<int>? cleaned = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(paths);
        AccessDecision decision = await courses.MayAsync(person, patient, Verb.Record);
        if (decision != AccessDecision.Granted)
        {
            return new PatientAnswer<ImagesTaken>(decision);
        }

        string place = Directory.CreateTempSubdirectory("cavaxis-taking-").FullName;
        List<InputFault> refused = [];
        List<TakenImage> taken = [];
        try
        {
            List<(DicomFile File, CleanedFile Clean)> clean = await CleanAsync(paths, place, mask, refused, cleaned, cancel);
            (DicomFile File, CleanedFile Clean)[] slices = [.. clean.Where(static c => c.File.Header.Kind == ImageKind.TomographySlice)];
            IEnumerable<(DicomFile File, CleanedFile Clean)[]> images = clean.Except(slices.Length > 1 ? slices : []).Select(static one => new[] { one });
            foreach ((DicomFile File, CleanedFile Clean)[] image in slices.Length > 1 ? images.Append(slices) : images)
            {
                KeptImage kept = await Task.Run(() => folder.Keep(Identifier.Of(patient), [.. image.Select(static i => i.Clean.Path)]), CancellationToken.None);
                string name = NameOf(image[0].File, image.Length);
                ImagingDone done = new() { Modality = modality, Finding = $"Taken in: {name}.", IsTakenIn = true, Image = new ImageReference { Name = name, FileSha256 = kept.Id } };
                PatientAnswer<CourseOutcome> written = await courses.RecordAsync(person, patient, null, new CourseWriting(done));
                if (written.Value is CourseRefused no)
                {
                    refused.AddRange(no.Faults);
                }
                else if (written.Decision != AccessDecision.Granted)
                {
                    return new PatientAnswer<ImagesTaken>(written.Decision);
                }
                else
                {
                    taken.Add(new TakenImage(kept.Id, name, image[0].Clean.MaskedPixels));
                }
            }
        }
        finally
        {
            Directory.Delete(place, recursive: true);
        }

        return new PatientAnswer<ImagesTaken>(decision, new ImagesTaken(taken, [.. refused.Distinct()]));
    }

    /// <summary>The images of a course, newest first.</summary>
    /// <param name="patient">Whose.</param>
    /// <param name="course">Their course.</param>
    /// <returns>Those that were taken in; a measurement on one is no other image.</returns>
    public IReadOnlyList<ListedImage> Of(string patient, PatientCourse course)
    {
        ArgumentNullException.ThrowIfNull(course);
        Identifier whose = Identifier.Of(patient);
        return [.. course.All<ImagingDone>()
            .Where(static e => NamedImage.IsTakenIn(e.Event))
            .DistinctBy(static e => e.Event.Image!.FileSha256)
            .OrderByDescending(static e => e.Sequence)
            .Select(e => new ListedImage(e.Event.Image!.FileSha256!, e, folder.Find(whose, e.Event.Image.FileSha256!) is not null))];
    }

    /// <summary>Opens an image.</summary>
    /// <param name="person">Who.</param>
    /// <param name="patient">Whose, as given.</param>
    /// <param name="id">Its hash.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>The image, where it was granted and is there; one that was altered since is not shown.</returns>
    /// <exception cref="InputFaultException">It was altered on the disk, or cannot be read.</exception>
    public async Task<PatientAnswer<OpenedImage>> OpenAsync(Person person, string patient, string id, CancellationToken cancel = default)
    {
        AccessDecision decision = await courses.MayAsync(person, patient, Verb.ReadPatient);
        if (decision != AccessDecision.Granted || folder.Find(Identifier.Of(patient), id) is not KeptImage kept)
        {
            return new PatientAnswer<OpenedImage>(decision);
        }

        return await Task.Run(() => folder.IsStillWhole(kept), cancel)
            ? new PatientAnswer<OpenedImage>(decision, new OpenedImage(kept, await reader.ReadAsync(kept.Files[0], cancel)))
            : throw new InputFaultException(new InputFault(
                FaultCode.Contradiction, "image", id[..12], "the file as it was taken in", "It was altered or lost on the disk and is not shown: take it in again from where it came."));
    }

    /// <summary>A frame of an image.</summary>
    /// <param name="image">The image.</param>
    /// <param name="index">The frame, from 0.</param>
    /// <param name="cancel">Ends the wait.</param>
    /// <returns>The frame.</returns>
    /// <exception cref="InputFaultException">There is no such frame, or it cannot be decoded.</exception>
    public Task<ImageFrame> FrameAsync(OpenedImage image, int index, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(image);
        return reader.FrameAsync(image.File, index, cancel);
    }

    /// <summary>All slices of a series as one volume; read once for all windows.</summary>
    /// <param name="image">The series.</param>
    /// <param name="cancel">Ends the wait; the reading goes on for others.</param>
    /// <returns>The volume and what to know about it.</returns>
    /// <exception cref="InputFaultException">The slices do not make a volume.</exception>
    public Task<ScanSeries> SeriesAsync(OpenedImage image, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(image);
        return series.GetAsync(image.Kept.Id, () => new SeriesReader(reader).ReadAsync(Path.GetDirectoryName(image.Kept.Files[0])!)).WaitAsync(cancel);
    }

    private async Task<List<(DicomFile File, CleanedFile Clean)>> CleanAsync(
        IReadOnlyList<string> paths, string place, PixelMask? mask, List<InputFault> refused, Action<int>? done, CancellationToken cancel)
    {
        DicomCleaner cleaner = new(reader, key);
        List<(DicomFile File, CleanedFile Clean)> cleaned = [];
        for (int i = 0; i < paths.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            try
            {
                DicomFile file = await reader.ReadAsync(paths[i], cancel);
                CleanedFile clean = await cleaner.CleanAsync(file, Path.Combine(place, string.Create(CultureInfo.InvariantCulture, $"{i:00000}.dcm")), mask, cancel);
                cleaned.Add((file, clean));
            }
            catch (InputFaultException fault)
            {
                // One bad file does not keep the others out.
                refused.AddRange(fault.Faults);
            }

            done?.Invoke(i + 1);
        }

        return cleaned;
    }

    private static string NameOf(DicomFile file, int files) => string.Create(
        CultureInfo.InvariantCulture,
        $"{(file.Header.Kind, files) switch
        {
            (ImageKind.TomographySlice, > 1) => $"computed tomography, {files} slices",
            (ImageKind.TomographySlice, _) => "one slice of computed tomography",
            (ImageKind.UltrasoundLoop, _) => $"ultrasound loop, {file.FrameCount} frames",
            (ImageKind.UltrasoundStill, _) => "ultrasound still",
            _ => file.FrameCount > 1 ? $"picture, {file.FrameCount} frames" : "picture",
        }}, {file.Header.Columns} × {file.Header.Rows} pixels");
}
