using System.Globalization;
using Cavaxis.Cli.Output;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Cli.SheetVerbs;

/// <summary>Tells that a file was written.</summary>
internal static class SheetText
{
    /// <summary>Tells it.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="json">Whether as JSON.</param>
    /// <param name="written">What was written.</param>
    /// <param name="what">What it is.</param>
    public static void Tell(CommandOutput output, bool json, SheetWritten written, string what)
    {
        if (json)
        {
            output.Json(written);
            return;
        }

        output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"{what} written to {InputFault.Shown(written.File)}, {written.Bytes} bytes. It names a patient: keep it as you keep the record."));
        if (written.Unread > 0)
        {
            output.Wrapped(string.Empty, string.Create(CultureInfo.InvariantCulture, $"{written.Unread} entries could not be read and are not in it. Run `record verify`."));
        }
    }
}
