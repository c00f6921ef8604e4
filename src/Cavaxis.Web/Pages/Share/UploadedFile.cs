using System.Globalization;
using Cavaxis.Quantities.Faults;
using Microsoft.AspNetCore.Components.Forms;

namespace Cavaxis.Web.Pages.Share;

/// <summary>Reads what a browser hands in, never more than is allowed.</summary>
internal static class UploadedFile
{
    /// <summary>Reads it.</summary>
    /// <param name="file">What was chosen.</param>
    /// <param name="most">Most bytes; more is refused before it is read, and never held.</param>
    /// <param name="wanted">What it should be, such as "an answer".</param>
    /// <returns>The bytes.</returns>
    /// <exception cref="InputFaultException">Too large, or it cannot be read.</exception>
    public static async Task<byte[]> ReadAsync(IBrowserFile file, long most, string wanted)
    {
        if (file.Size > most)
        {
            throw TooLarge(file.Size, most, wanted);
        }

        try
        {
            using MemoryStream target = new();
            await using (Stream stream = file.OpenReadStream(most))
            {
                await stream.CopyToAsync(target);
            }

            return target.ToArray();
        }
        catch (IOException)
        {
            throw new InputFaultException(new InputFault(FaultCode.UnreadableFile, "file", "one that could not be read", wanted, "Choose the file again; if that fails, copy it to this machine first."));
        }
    }

    private static InputFaultException TooLarge(long size, long most, string wanted) => new(new InputFault(
        FaultCode.FileTooLarge, "file", $"{Mebi(size)} MiB", $"{wanted} of at most {Mebi(most)} MiB", "Check that it is the right file."));

    private static string Mebi(long bytes) => (bytes / (1024.0 * 1024)).ToString("0.##", CultureInfo.InvariantCulture);
}
