namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>What one step of a control does to the number that matters, in the patient shown.</summary>
/// <param name="Words">The step in words.</param>
/// <param name="Difference">Change of the number, in its unit.</param>
public sealed record Lever(string Words, double Difference);
