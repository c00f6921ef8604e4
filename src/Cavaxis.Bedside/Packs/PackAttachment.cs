namespace Cavaxis.Bedside.Packs;

/// <summary>A picture or page that goes along.</summary>
/// <param name="Name">File name of small letters, digits and dashes with the ending png or pdf; it can lead out of no folder.</param>
/// <param name="Bytes">The file.</param>
public sealed record PackAttachment(string Name, byte[] Bytes);
