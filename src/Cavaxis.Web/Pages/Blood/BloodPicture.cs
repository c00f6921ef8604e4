using Cavaxis.Planning.Arterial;
using Cavaxis.Web.Pages.WhatIf;

namespace Cavaxis.Web.Pages.Blood;

/// <summary>An answer with the circulation that it stands on.</summary>
/// <param name="Circulation">The circulation before any change.</param>
/// <param name="Answer">The answer.</param>
public sealed record BloodPicture(RunningPicture Circulation, ArteriesAnswer Answer);
