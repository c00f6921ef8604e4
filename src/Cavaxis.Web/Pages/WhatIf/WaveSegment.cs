namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>A piece of time in a packet of waveforms.</summary>
/// <param name="Spacing">Time between samples, s.</param>
/// <param name="Count">Samples of each strip.</param>
/// <param name="Repeats">True where it is played again and again until something else follows.</param>
/// <param name="Mark">Word at its beginning; empty for none.</param>
public sealed record WaveSegment(double Spacing, int Count, bool Repeats, string Mark);
