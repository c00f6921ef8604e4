using System.ComponentModel;
using Spectre.Console.Cli;

namespace Cavaxis.Cli.Commands;

/// <summary>What <c>whatif</c> takes.</summary>
public sealed class WhatIfSettings : CalibrationSettings
{
    /// <summary>Changes.</summary>
    [CommandOption("--change <NAME=VALUE>")]
    [Description("What is changed, e.g. flow=4.5, bloodVolumeMl=+500, contractility=150%; may be given several times. Names: circulation --parameters.")]
    public string[] Changes { get; init; } = [];
}
