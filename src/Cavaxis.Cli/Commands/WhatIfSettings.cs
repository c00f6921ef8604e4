using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What <c>whatif</c> takes.</summary>
public sealed class WhatIfSettings : CalibrationSettings
{
    /// <summary>Changes.</summary>
    [CommandOption("--change <NAME=VALUE>")]
    [Description("What is changed in every member of the fit: flow=4.5 sets, bloodVolumeMl=+500 adds in its unit, contractility=150% or x1.5 multiplies, peep=-20% changes by a share; may be given several times. Names: circulation --parameters.")]
    public string[] Changes { get; init; } = [];

    /// <summary>The arterial tree too.</summary>
    [CommandOption("--arteries")]
    [Description("On arterial support also tell where blood of heart and pump meet, and what heart, brain, hands and legs get, before and after, for the best fit.")]
    public bool Arteries { get; init; }
}
