using Cavaxis.Bedside.Sealing;
using Cavaxis.Quantities.Faults;
using Cavaxis.Web.Record;

namespace Cavaxis.Web.Pages.Share;

/// <summary>Does something with packs and tells every refusal in words.</summary>
internal static class ShareFault
{
    /// <summary>What kept it from being done.</summary>
    /// <param name="work">What to do.</param>
    /// <returns>Nothing where it was done.</returns>
    public static async Task<IReadOnlyList<string>> OfAsync(Func<Task> work)
    {
        try
        {
            await RecordFault.InAsync(async () =>
            {
                await work();
                return true;
            });
            return [];
        }
        catch (InputFaultException refused)
        {
            return [.. refused.Faults.Select(static f => f.ToString())];
        }
        catch (SealFaultException refused)
        {
            return [SealWords.Of(refused.Fault)];
        }
        catch (InvalidOperationException)
        {
            // More files were chosen at once than are read.
            return ["Too many files were chosen at once. Choose at most 20."];
        }
    }
}
