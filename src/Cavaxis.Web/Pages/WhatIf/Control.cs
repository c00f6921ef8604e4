using Cavaxis.Circulation.Calibration;
using Cavaxis.Circulation.Parameters;

namespace Cavaxis.Web.Pages.WhatIf;

/// <summary>One number that a person can change on the page.</summary>
/// <param name="Key">Short name, for the page's own marks.</param>
/// <param name="Parameter">The number of the model.</param>
/// <param name="Words">In plain words.</param>
/// <param name="Unit">Unit on the page.</param>
/// <param name="PerTable">What one of the table's unit is in the unit of the page.</param>
/// <param name="Step">Step of the buttons, unit of the page; for a share, in parts of one.</param>
/// <param name="Form">How the members are changed: a setting is set in all, an unknown moves each from where it is.</param>
/// <param name="Digits">Digits after the point.</param>
public sealed record Control(
    string Key, CirculationParameter Parameter, string Words, string Unit, double PerTable, double Step, ChangeKind Form, int Digits);
