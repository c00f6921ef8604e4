namespace Cavaxis.Devices.Hydraulics;

/// <summary>
/// Combining manifold: blood enters through the rows and runs to the hub. Side holes bring no axial momentum, so the suction grows
/// over a row by ρ(V₂² − V₁²) and along the bore by friction; the rows nearest the pump feel the most suction.
/// </summary>
internal static class DrainageManifold
{
    /// <summary>Walks from the tip to the hub with a given flow through the outermost row.</summary>
    /// <param name="steps">The path.</param>
    /// <param name="firstFlow">Flow through the outermost row, m³/s, positive.</param>
    /// <param name="fluid">The liquid.</param>
    /// <param name="groupFlow">Filled with the flow of each group.</param>
    /// <param name="ledger">Filled with the causes of the drop.</param>
    /// <param name="dropPa">Static suction in the hub bore.</param>
    /// <returns>Total flow, m³/s.</returns>
    internal static double Walk(
        ReadOnlySpan<PathStep> steps, double firstFlow, Fluid fluid, Span<double> groupFlow, ref DropLedger ledger, out double dropPa)
    {
        double rho = fluid.DensityKgPerM3;
        double flow = 0;
        double suction = 0;
        for (int i = 0; i < steps.Length; i++)
        {
            ref readonly PathStep step = ref steps[i];
            double before = flow / step.TipAreaM2;
            switch (step.Kind)
            {
                case PathStepKind.Row when i == 0 && step.Row.Axial:
                    flow = firstFlow;
                    suction = OpenEnd(firstFlow, step, rho, ref ledger);
                    groupFlow[step.Row.Group] += firstFlow;
                    break;

                case PathStepKind.Row:
                    double entering = i == 0
                        ? firstFlow
                        : step.Row.AreaM2 * Orifice.VelocityMPerS(suction, step.Row.DiameterM, fluid);
                    if (i == 0)
                    {
                        suction = Orifice.DropPa(firstFlow / step.Row.AreaM2, step.Row.DiameterM, fluid);
                        ledger.AddHoles(suction);
                    }

                    flow += entering;
                    groupFlow[step.Row.Group] += entering;
                    double after = flow / step.AreaM2;
                    double acceleration = rho * ((after * after) - (before * before));
                    suction += acceleration;
                    ledger.AddFitting(acceleration);
                    break;

                case PathStepKind.Run:
                    suction += Friction(step, before, fluid, ref ledger);
                    break;

                default:
                    double wide = flow / step.AreaM2;
                    double loss = ChangeLoss(step.TipAreaM2, step.AreaM2, before, wide, rho);
                    suction += loss + (0.5 * rho * ((wide * wide) - (before * before)));
                    ledger.AddFitting(loss);
                    break;
            }
        }

        dropPa = Math.Max(0, suction);
        return flow;
    }

    /// <summary>Friction of a stretch.</summary>
    internal static double Friction(in PathStep step, double velocity, Fluid fluid, ref DropLedger ledger)
    {
        double reynolds = fluid.DensityKgPerM3 * velocity * step.DiameterM / fluid.ViscosityPaS;
        if (reynolds <= 0)
        {
            return 0;
        }

        double factor = TubeFriction.DisturbedInletUnchecked(reynolds);
        double drop = factor * step.LengthM / step.DiameterM * 0.5 * fluid.DensityKgPerM3 * velocity * velocity;
        ledger.AddFriction(drop, reynolds, factor);
        return drop;
    }

    /// <summary>Total-pressure loss at a change of bore; the stream runs from the first to the second section.</summary>
    internal static double ChangeLoss(double fromArea, double toArea, double fromVelocity, double toVelocity, double rho) =>
        fromArea > toArea
            ? LossCoefficient.Contraction(toArea / fromArea, LossCoefficient.MouldedTransitionDegrees) * 0.5 * rho * toVelocity * toVelocity
            : LossCoefficient.Expansion(fromArea / toArea, LossCoefficient.MouldedTransitionDegrees) * 0.5 * rho * fromVelocity * fromVelocity;

    private static double OpenEnd(double flow, in PathStep step, double rho, ref DropLedger ledger)
    {
        double opening = Math.Min(step.Row.AreaM2, step.AreaM2);
        double throat = flow / opening;
        double bore = flow / step.AreaM2;
        double entrance = LossCoefficient.SharpEntrance * 0.5 * rho * throat * throat;
        double widening = ChangeLoss(opening, step.AreaM2, throat, bore, rho);
        double head = 0.5 * rho * bore * bore;
        ledger.AddFitting(entrance + widening + head);
        return entrance + widening + head;
    }
}
