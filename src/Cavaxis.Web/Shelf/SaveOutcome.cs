namespace Cavaxis.Web.Shelf;

/// <summary>What became of a save.</summary>
/// <param name="Saved">True when it was saved; false when another window had saved first.</param>
/// <param name="Newest">The newest version: the one just saved, or the one that came before it.</param>
public sealed record SaveOutcome(bool Saved, CaseVersion Newest);
