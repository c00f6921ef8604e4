namespace Cavaxis.Bedside.DeIdentification;

/// <summary>A text that a person wrote and that may name someone: carried only where a person confirms it.</summary>
/// <param name="Code">First digits of the hash of place and text; confirming means naming it, so that another text is not confirmed by mistake.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="Text">The text.</param>
public sealed record FreeText(string Code, string Place, string Text);
