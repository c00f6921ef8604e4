namespace Cavaxis.Arteries.Boundaries;

/// <summary>
/// What a condition at an open end sees of its vessel in the middle of a time step: the state that arrives there, and through it every state
/// that the vessel can take on, because only the wave that runs back into the vessel is free. Flow and velocity count outwards, out of the network.
/// Along that wave U + 4c keeps its value (exact for a lumen without a body in it).
/// </summary>
public readonly struct VesselEnd
{
    private const int MostIterations = 40;

    // Newton's method squares the error: a last change of 1e-7 leaves one of about 1e-14.
    private const double Enough = 1e-7;
    private readonly double stiffness;
    private readonly double pressureOffset;
    private readonly double bodyArea;
    private readonly double invariant;

    /// <summary>An end.</summary>
    /// <param name="area">Area of the blood that arrives, m².</param>
    /// <param name="velocityOut">Its velocity outwards, m/s.</param>
    /// <param name="stiffness">K of the tube law, Pa/m.</param>
    /// <param name="pressureOffset">Pref − K √Wref, Pa.</param>
    /// <param name="bodyArea">Area taken up by a body in the lumen, m².</param>
    /// <param name="density">Density, kg/m³.</param>
    public VesselEnd(double area, double velocityOut, double stiffness, double pressureOffset, double bodyArea, double density)
    {
        Area = area;
        VelocityOut = velocityOut;
        this.stiffness = stiffness;
        this.pressureOffset = pressureOffset;
        this.bodyArea = bodyArea;
        Density = density;
        invariant = velocityOut + (4 * WaveSpeedAt(area));
    }

    /// <summary>Area of the blood that arrives, m².</summary>
    public double Area { get; }

    /// <summary>Its velocity outwards, m/s.</summary>
    public double VelocityOut { get; }

    /// <summary>Density, kg/m³.</summary>
    public double Density { get; }

    /// <summary>Flow that arrives, outwards, m³/s.</summary>
    public double FlowOut => Area * VelocityOut;

    /// <summary>Pressure that arrives, Pa.</summary>
    public double Pressure => PressureAt(Area);

    /// <summary>Characteristic impedance of the end: small changes obey dP = −Z dQ, Pa·s/m³.</summary>
    public double Impedance
    {
        get
        {
            double c = WaveSpeedAt(Area);
            return Density * c * c / (Area * (c - VelocityOut));
        }
    }

    /// <summary>Pressure of the wall at an area of blood, Pa.</summary>
    /// <param name="area">Area, m².</param>
    /// <returns>Pressure.</returns>
    public double PressureAt(double area) => (stiffness * Math.Sqrt(area + bodyArea)) + pressureOffset;

    /// <summary>Area of blood at a pressure, m².</summary>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <returns>Area; not a number below the pressure at which the vessel is empty.</returns>
    public double AreaAtPressure(double pressure)
    {
        double root = (pressure - pressureOffset) / stiffness;
        return root > 0 && root * root > bodyArea ? (root * root) - bodyArea : double.NaN;
    }

    /// <summary>Wave speed at an area of blood, m/s.</summary>
    /// <param name="area">Area, m².</param>
    /// <returns>Wave speed.</returns>
    public double WaveSpeedAt(double area) => Math.Sqrt(area * stiffness / (2 * Density * Math.Sqrt(area + bodyArea)));

    /// <summary>Velocity outwards that the vessel takes on at an area, m/s.</summary>
    /// <param name="area">Area, m².</param>
    /// <returns>Velocity.</returns>
    public double VelocityAt(double area) => invariant - (4 * WaveSpeedAt(area));

    /// <summary>Area that the vessel takes on when a flow is drawn outwards, m².</summary>
    /// <param name="flowOut">Flow, m³/s.</param>
    /// <returns>Area; not a number where the vessel cannot carry the flow below the speed of its waves.</returns>
    public double AreaAtFlow(double flowOut)
    {
        double area = Area;
        for (int i = 0; i < MostIterations; i++)
        {
            double c = WaveSpeedAt(area);
            double u = invariant - (4 * c);
            double change = (flowOut - (area * u)) / (u - c);
            area = Damped(area, change);
            if (Math.Abs(change) <= Enough * area)
            {
                return area;
            }
        }

        return double.NaN;
    }

    /// <summary>Pressure that the vessel takes on when a flow is drawn outwards, Pa.</summary>
    /// <param name="flowOut">Flow, m³/s.</param>
    /// <returns>Pressure.</returns>
    public double PressureAtFlow(double flowOut) => PressureAt(AreaAtFlow(flowOut));

    /// <summary>Flow outwards when a pressure is held at the end, m³/s.</summary>
    /// <param name="pressure">Pressure, Pa.</param>
    /// <returns>Flow.</returns>
    public double FlowAtPressure(double pressure)
    {
        double area = AreaAtPressure(pressure);
        return area * VelocityAt(area);
    }

    /// <summary>Flow outwards into a load with P = pressure + resistance · Q, m³/s.</summary>
    /// <param name="pressure">Pressure of the load without flow, Pa.</param>
    /// <param name="resistance">Its resistance, Pa·s/m³.</param>
    /// <returns>Flow; not a number where there is no solution.</returns>
    public double FlowInto(double pressure, double resistance)
    {
        double area = Area;
        for (int i = 0; i < MostIterations; i++)
        {
            double c = WaveSpeedAt(area);
            double u = invariant - (4 * c);
            double misfit = PressureAt(area) - pressure - (resistance * area * u);
            double change = -misfit / ((Density * c * c / area) - (resistance * (u - c)));
            area = Damped(area, change);
            if (Math.Abs(change) <= Enough * area)
            {
                return area * VelocityAt(area);
            }
        }

        return double.NaN;
    }

    // Newton far from its answer must not leave the positive areas.
    private static double Damped(double area, double change) => area + Math.Max(change, -0.5 * area);
}
