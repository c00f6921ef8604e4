using Cavaxis.Records.Engines;
using Cavaxis.Records.Faults;
using Microsoft.EntityFrameworkCore;

namespace Cavaxis.Records.Keeping;

/// <summary>Makes a SQLite store under a name beside the wanted one, and gives it that name only when it is whole.</summary>
internal static class NewFile
{
    /// <summary>Makes the file.</summary>
    /// <param name="path">Wanted path; nothing may be there.</param>
    /// <param name="fill">Fills the store.</param>
    /// <returns>What the filling gave.</returns>
    /// <exception cref="StoreFaultException">Something is there, or the store cannot be written; no file is left.</exception>
    public static async Task<T> MakeAsync<T>(string path, Func<StoreDatabase, Task<T>> fill)
    {
        if (Path.Exists(path))
        {
            throw AlreadyThere();
        }

        string part = $"{path}.part-{Guid.NewGuid():N}";
        try
        {
            T filled;
            using (StoreDatabase target = await StoreDatabase.OpenAsync(StoreAddress.Of(part)))
            {
                // With a rollback journal a new file is written once, not twice, and stays one file.
                await target.DoAsync(static context => context.Database.ExecuteSqlRawAsync("PRAGMA journal_mode = DELETE"));
                filled = await fill(target);
            }

            File.Move(part, path, overwrite: false);
            return filled;
        }
        catch (IOException) when (Path.Exists(path))
        {
            throw AlreadyThere();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StoreFaultException(new StoreFault(StoreFaultCode.CannotOpen, "the file cannot be written", "a folder you may write to", "Check the path."), e);
        }
        finally
        {
            foreach (string left in new[] { part, part + "-journal", part + "-wal", part + "-shm" })
            {
                File.Delete(left);
            }
        }
    }

    private static StoreFaultException AlreadyThere() => new(new StoreFault(
        StoreFaultCode.AlreadyThere, "a file of that name is there", "a name that is not taken", "Name another file: nothing is overwritten."));
}
