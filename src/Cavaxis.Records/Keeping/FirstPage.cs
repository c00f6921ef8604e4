using System.Buffers.Binary;
using Cavaxis.Records.Engines;

namespace Cavaxis.Records.Keeping;

/// <summary>
/// Puts a new first page into a copy of a damaged file. That page holds the header and the list of tables, without which SQLite gives
/// nothing; in every store of one format it says the same, so it can be had from a new one. Layout: SQLite documentation, "Database File Format" 1.3.
/// </summary>
internal static class FirstPage
{
    private const int PageSize = 4096;
    private const int ChangeCounter = 24;
    private const int PageCount = 28;
    private const int FreeList = 32;
    private const int ValidFor = 92;

    /// <summary>Mends the copy.</summary>
    /// <param name="copy">The copy of the damaged file.</param>
    /// <param name="folder">Folder for a new store.</param>
    /// <returns>True where a page was put in.</returns>
    public static async Task<bool> MendAsync(string copy, string folder)
    {
        string fresh = Path.Combine(folder, "fresh.db");
        using (await StoreDatabase.OpenAsync(StoreAddress.Of(fresh)))
        {
        }

        byte[] page = new byte[PageSize];
        using (FileStream made = File.OpenRead(fresh))
        {
            await made.ReadExactlyAsync(page);
        }

        using FileStream file = new(copy, FileMode.Open, FileAccess.ReadWrite);
        if (file.Length < 2 * PageSize)
        {
            return false;
        }

        BinaryPrimitives.WriteUInt32BigEndian(page.AsSpan(PageCount), (uint)(file.Length / PageSize));
        page.AsSpan(FreeList, 8).Clear();
        page.AsSpan(ChangeCounter, 4).CopyTo(page.AsSpan(ValidFor));
        await file.WriteAsync(page);
        return true;
    }
}
