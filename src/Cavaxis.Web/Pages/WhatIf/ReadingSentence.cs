using Cavaxis.Circulation.Signals;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>A sentence of the reading.</summary>
/// <param name="Quantity">What it is about.</param>
/// <param name="Text">The sentence.</param>
/// <param name="LookNext">What to look at next.</param>
/// <param name="Question">Key of the question where that is found.</param>
/// <param name="HasCause">True where a chain of causes was found.</param>
public sealed record ReadingSentence(CirculationQuantity Quantity, string Text, string LookNext, string Question, bool HasCause);
