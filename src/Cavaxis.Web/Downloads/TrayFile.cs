namespace Cavaxis.Web.Downloads;

/// <summary>A file that was made for one person to fetch.</summary>
/// <param name="Owner">Name to sign in with of the person.</param>
/// <param name="Name">File name.</param>
/// <param name="ContentType">Its kind.</param>
/// <param name="Bytes">The file.</param>
/// <param name="Until">After this it is gone.</param>
public sealed record TrayFile(string Owner, string Name, string ContentType, byte[] Bytes, DateTimeOffset Until);
