using Cavaxis.Devices.Wires;
using Cavaxis.Quantities;

namespace Cavaxis.Planning.Plans;

/// <summary>How wire and cannulae of a plan go in, in one line.</summary>
/// <param name="Wire">Class of wire.</param>
/// <param name="Anatomies">Number of anatomies it was tried in.</param>
/// <param name="EveryCannulaRight">Share of them in which every part of every venous cannula goes as it should; null where the plan has no cannula that can be studied.</param>
/// <param name="Pitfall">What goes wrong first where something does, in words; empty where nothing does.</param>
public sealed record InsertionGlance(WireClass Wire, int Anatomies, Estimate? EveryCannulaRight, string Pitfall);
