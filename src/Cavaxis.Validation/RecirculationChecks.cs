using Cavaxis.Circulation.Parameters;
using Cavaxis.Circulation.Signals;
using Cavaxis.Circulation.Simulation;
using Cavaxis.Quantities;
using static Cavaxis.Validation.RecirculationSettings;

namespace Cavaxis.Validation;

/// <summary>Recirculation of the computed circulation against published series; what the model misses stays as a row that fails.</summary>
public sealed class RecirculationChecks : IReferenceChecks
{
    private const string Multi = "drain-multi-25fr-55cm";
    private const string Single = "drain-single-23fr-50cm";

    /// <summary>Rows that the model misses: at high flow it finds more recirculation, at low flow of a high port less.</summary>
    private static readonly HashSet<string> Misses =
    [
        "Recirculation: Dual lumen well placed, 6 L/min",
        "Recirculation: Dual lumen 4 cm too shallow, 2 L/min",
        "Recirculation: Dual lumen 4 cm too shallow, 4 L/min",
    ];

    /// <inheritdoc/>
    public IEnumerable<ValidationRow> Rows()
    {
        Source dual = new("Parker et al., computed flow in a 27 Fr dual-lumen cannula, 2 to 6 L/min", Certainty.Seen);
        Source series = new("Two-centre prospective series by ultrasound dilution, 55 patients", Certainty.Seen);
        Source palmer = new("Palmer et al. 2016, ASAIO J 62:737", Certainty.Seen);
        (string Check, Source Source, double Expected, Tolerance How, double Bound, CirculationParameters Set)[] all =
        [
            ("Dual lumen well placed, 2 L/min", dual, 7, Tolerance.AtMost, 0, DualLumen(2, 0, 0)),
            ("Dual lumen well placed, 4 L/min", dual, 7, Tolerance.AtMost, 0, DualLumen(4, 0, 0)),
            ("Dual lumen well placed, 6 L/min", dual, 7, Tolerance.AtMost, 0, DualLumen(6, 0, 0)),
            ("Dual lumen 4 cm too shallow, 2 L/min", dual, 31, Tolerance.AtLeast, 0, DualLumen(2, -40, 0)),
            ("Dual lumen 4 cm too shallow, 4 L/min", dual, 31, Tolerance.AtLeast, 0, DualLumen(4, -40, 0)),
            ("Dual lumen 4 cm too shallow, 6 L/min", dual, 31, Tolerance.AtLeast, 0, DualLumen(6, -40, 0)),
            ("Dual lumen 4 cm too deep, 6 L/min", dual, 24, Tolerance.Absolute, 10, DualLumen(6, 40, 0)),
            ("Femoro-jugular, multistage, 3 L/min", series, 5, Tolerance.Absolute, 6, FemoroJugular(3, Multi, InferiorJunctionMm + 10, 0)),
            ("Jugulo-femoral, 3.57 L/min", series, 19, Tolerance.Absolute, 9, JugularDrainage(3.57, Single, MiddleOfAtriumMm, InferiorJunctionMm + 25)),
            ("Atrio-femoral, single-stage drainage, 4 L/min", palmer, 38, Tolerance.Absolute, 14, JugularDrainage(4, Single, MiddleOfAtriumMm, InferiorJunctionMm + 25)),
            ("Atrio-femoral, multistage drainage, 4 L/min", palmer, 19, Tolerance.Absolute, 12, JugularDrainage(4, Multi, MiddleOfAtriumMm, InferiorJunctionMm + 25)),
        ];
        IReadOnlyList<SettledState> pairs = CirculationSimulator.Settle(
        [
            FemoroJugular(4.5, Single, 70, 0), FemoroJugular(4.5, Single, 200, 0), DualLumen(4, 0, 0), DualLumen(4, 0, 30), DualLumen(4, 0, 90),
        ]);
        double[] of = [.. pairs.Select(static s => s.Summary?[CirculationQuantity.RecirculationPercent] ?? double.NaN)];

        // The flow simulation has a steady inflow and an open outlet; in a beating atrium return spills back while the tricuspid valve is shut.
        IReadOnlyList<SettledState> states = CirculationSimulator.Settle([.. all.Select(static a => a.Set)]);
        IEnumerable<ValidationRow> levels = all.Select((a, i) => new ValidationRow(
            "Circulation", "Recirculation: " + a.Check, a.Source, a.Expected,
            states[i].Summary?[CirculationQuantity.RecirculationPercent] ?? double.NaN, "%", a.How, a.Bound,
            "Places in the median adult are assumed; the series gives none. Output 6.7 L/min; the source of the dual lumen rows does not give its own."))
            .Select(static row => row with { KnownMiss = Misses.Contains(row.Check) });
        return [.. levels, .. Moves(of)];
    }

    /// <summary>What moving a cannula changes.</summary>
    private static IEnumerable<ValidationRow> Moves(double[] of)
    {
        Source pigs = new("Pig series 2024, Intensive Care Med Exp 12:51: tips 20-26 against 10-14 cm apart, 16 % (value or points)", Certainty.Seen);
        Source turn = new("Parker et al.: no effect of a turn by 30 degrees", Certainty.Seen);
        Source wall = new("Conrad and Wang 2021, moving walls: a turned port recirculates more (over 20 % effect)", Certainty.Seen);
        yield return new ValidationRow(
            "Circulation", "Recirculation: tips 7 against 20 cm apart, 4.5 L/min: more with nearer tips", pigs, 0, of[0] - of[1], "points", Tolerance.AtLeast, 0);
        yield return new ValidationRow(
            "Circulation", "Recirculation: dual lumen turned by 30 degrees, 4 L/min: change", turn, 0, of[3] - of[2], "points", Tolerance.Absolute, 2);
        yield return new ValidationRow(
            "Circulation", "Recirculation: dual lumen turned away from the valve (90 degrees), 4 L/min: rise", wall, 0, of[4] - of[2], "points", Tolerance.AtLeast, 0);
    }
}
