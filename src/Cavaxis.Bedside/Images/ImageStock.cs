using System.Globalization;
using Cavaxis.Bedside.ImageKeeping;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Bedside.Images;

/// <summary>How the images that a record names lie beside it.</summary>
/// <param name="Named">How many it names.</param>
/// <param name="Whole">How many of them lie there as they were taken in.</param>
/// <param name="Trouble">Each that is missing or altered, in words: patient and hash.</param>
public sealed record ImageStock(int Named, int Whole, IReadOnlyList<string> Trouble)
{
    /// <summary>Looks at each: every byte is hashed.</summary>
    /// <param name="named">The images that the record names.</param>
    /// <param name="folder">Where they lie.</param>
    /// <returns>What was found.</returns>
    public static ImageStock Of(IReadOnlyList<NamedImage> named, ImageFolder folder) => Of(named, folder, static _ => { });

    /// <summary>Copies each that is whole to another folder; what is there already and the same stays.</summary>
    /// <param name="named">The images that the record names.</param>
    /// <param name="from">Where they lie.</param>
    /// <param name="to">Where they shall lie.</param>
    /// <returns>What was copied, and what was missing or altered.</returns>
    /// <exception cref="InputFaultException">The other folder cannot be written.</exception>
    public static ImageStock Copy(IReadOnlyList<NamedImage> named, ImageFolder from, ImageFolder to)
    {
        ArgumentNullException.ThrowIfNull(to);
        return Of(named, from, found => to.Keep(found.Image.Patient, found.Kept.Files));
    }

    private static ImageStock Of(IReadOnlyList<NamedImage> named, ImageFolder folder, Action<(NamedImage Image, KeptImage Kept)> whole)
    {
        ArgumentNullException.ThrowIfNull(named);
        ArgumentNullException.ThrowIfNull(folder);
        List<string> trouble = [];
        foreach (NamedImage image in named)
        {
            KeptImage? kept = folder.Find(image.Patient, image.Id);
            if (kept is not null && ImageFolder.IsWhole(kept))
            {
                whole((image, kept));
            }
            else
            {
                trouble.Add(string.Create(CultureInfo.InvariantCulture, $"image {image.Id} of patient {image.Patient.Text} {(kept is null ? "is missing" : "was altered")}"));
            }
        }

        return new ImageStock(named.Count, named.Count - trouble.Count, trouble);
    }
}
