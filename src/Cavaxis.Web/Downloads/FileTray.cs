using System.Security.Cryptography;

namespace Cavaxis.Web.Downloads;

/// <summary>
/// Files that a page made and a browser is about to fetch: sealed packs, answers, what was opened. They lie in memory alone, under addresses of chance, for the person
/// who made them and for a quarter of an hour.
/// </summary>
/// <param name="clock">Tells when they go.</param>
public sealed class FileTray(TimeProvider clock)
{
    /// <summary>How long a file waits. Assumption of this project.</summary>
    public static readonly TimeSpan Waits = TimeSpan.FromMinutes(15);

    /// <summary>Most bytes that wait for one person; older files go first.</summary>
    public const long MostBytes = 160L * 1024 * 1024;

    private readonly Lock turn = new();
    private readonly Dictionary<string, TrayFile> files = new(StringComparer.Ordinal);

    /// <summary>Puts a file there.</summary>
    /// <param name="owner">Name to sign in with of whoever may fetch it.</param>
    /// <param name="name">File name of plain letters.</param>
    /// <param name="contentType">Its kind.</param>
    /// <param name="bytes">The file.</param>
    /// <returns>Its address from the root of the workspace.</returns>
    public string Put(string owner, string name, string contentType, byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        string ticket = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        lock (turn)
        {
            DropOld();
            while (files.Where(f => f.Value.Owner == owner).Sum(static f => (long)f.Value.Bytes.Length) + bytes.Length > MostBytes
                && files.Where(f => f.Value.Owner == owner).OrderBy(static f => f.Value.Until).FirstOrDefault() is { Key: string oldest })
            {
                files.Remove(oldest);
            }

            files[ticket] = new TrayFile(owner, name, contentType, bytes, clock.GetUtcNow() + Waits);
        }

        return $"report/kept/{ticket}/{name}";
    }

    /// <summary>The file of an address.</summary>
    /// <param name="ticket">The chance in it.</param>
    /// <param name="name">The name in it.</param>
    /// <param name="person">Who asks.</param>
    /// <returns>The file; null where there is none for this person.</returns>
    public TrayFile? Find(string ticket, string name, string person)
    {
        lock (turn)
        {
            DropOld();
            return files.TryGetValue(ticket, out TrayFile? file) && file.Owner == person && file.Name == name ? file : null;
        }
    }

    /// <summary>Takes a file away.</summary>
    /// <param name="address">Its address as it was given.</param>
    public void Remove(string address)
    {
        ArgumentNullException.ThrowIfNull(address);
        lock (turn)
        {
            if (address.Split('/') is [_, _, string ticket, _])
            {
                files.Remove(ticket);
            }
        }
    }

    private void DropOld()
    {
        foreach (string old in files.Where(f => f.Value.Until <= clock.GetUtcNow()).Select(static f => f.Key).ToArray())
        {
            files.Remove(old);
        }
    }
}
