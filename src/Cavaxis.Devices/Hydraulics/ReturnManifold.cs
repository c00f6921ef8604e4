namespace Cavaxis.Devices.Hydraulics;

/// <summary>
/// Dividing manifold: blood comes from the hub and leaves through the rows. Over a row the static pressure recovers as the stream
/// slows (Bernoulli) less a run loss 0.4 (V₁ − V₂)² ½ρ, and never falls below that of the vessel; an open end therefore sits at the vessel pressure and takes most.
/// </summary>
internal static class ReturnManifold
{
    // Loss of the run of a dividing tee (Idelchik; Gardel): remembered, within the spread of loss coefficients.
    private const double RunLoss = 0.4;

    /// <summary>Walks from the tip to the hub with a given flow through the outermost row.</summary>
    /// <param name="steps">The path.</param>
    /// <param name="firstFlow">Flow through the outermost row, m³/s, positive.</param>
    /// <param name="fluid">The liquid.</param>
    /// <param name="groupFlow">Filled with the flow of each group.</param>
    /// <param name="ledger">Filled with the causes of the drop.</param>
    /// <param name="dropPa">Total pressure in the hub bore above the vessel.</param>
    /// <returns>Total flow, m³/s.</returns>
    internal static double Walk(
        ReadOnlySpan<PathStep> steps, double firstFlow, Fluid fluid, Span<double> groupFlow, ref DropLedger ledger, out double dropPa)
    {
        double rho = fluid.DensityKgPerM3;
        double flow = 0;
        double pressure = 0;
        for (int i = 0; i < steps.Length; i++)
        {
            ref readonly PathStep step = ref steps[i];
            double before = flow / step.TipAreaM2;
            switch (step.Kind)
            {
                case PathStepKind.Row when i == 0 && step.Row.Axial:
                    flow = firstFlow;
                    pressure = OpenEnd(firstFlow, step, rho, ref ledger);
                    groupFlow[step.Row.Group] += firstFlow;
                    break;

                case PathStepKind.Row when i == 0:
                    flow = firstFlow;
                    pressure = Orifice.DropPa(firstFlow / step.Row.AreaM2, step.Row.DiameterM, fluid);
                    ledger.AddHoles(pressure);
                    groupFlow[step.Row.Group] += firstFlow;
                    pressure = Upstream(pressure, 0, flow / step.AreaM2, rho, ref ledger);
                    break;

                case PathStepKind.Row:
                    double leaving = step.Row.AreaM2 * Orifice.VelocityMPerS(pressure, step.Row.DiameterM, fluid);
                    flow += leaving;
                    groupFlow[step.Row.Group] += leaving;
                    pressure = Upstream(pressure, before, flow / step.AreaM2, rho, ref ledger);
                    break;

                case PathStepKind.Run:
                    pressure += DrainageManifold.Friction(step, before, fluid, ref ledger);
                    break;

                default:
                    double upstream = flow / step.AreaM2;
                    double loss = DrainageManifold.ChangeLoss(step.AreaM2, step.TipAreaM2, upstream, before, rho);
                    double ideal = pressure + (0.5 * rho * ((before * before) - (upstream * upstream)));
                    pressure = Math.Max(0, ideal + loss);
                    ledger.AddFitting(pressure - ideal);
                    break;
            }
        }

        double hub = flow / steps[^1].AreaM2;
        dropPa = Math.Max(0, pressure + (0.5 * rho * hub * hub));
        return flow;
    }

    // Static pressure on the hub side of a row. It is not let below that of the vessel: there a hole would draw blood in, and what it
    // draws in spoils the recovery, so the drop is taken as lost.
    private static double Upstream(double tipPressure, double tipSide, double hubSide, double rho, ref DropLedger ledger)
    {
        double run = RunLoss * 0.5 * rho * (hubSide - tipSide) * (hubSide - tipSide);
        double ideal = tipPressure - (0.5 * rho * ((hubSide * hubSide) - (tipSide * tipSide)));
        double upstream = Math.Max(0, ideal + run);
        ledger.AddFitting(upstream - ideal);
        return upstream;
    }

    private static double OpenEnd(double flow, in PathStep step, double rho, ref DropLedger ledger)
    {
        double opening = Math.Min(step.Row.AreaM2, step.AreaM2);
        double throat = flow / opening;
        double bore = flow / step.AreaM2;
        double total = (LossCoefficient.Exit * 0.5 * rho * throat * throat)
            + DrainageManifold.ChangeLoss(step.AreaM2, opening, bore, throat, rho);
        ledger.AddFitting(total);
        return total - (0.5 * rho * bore * bore);
    }
}
