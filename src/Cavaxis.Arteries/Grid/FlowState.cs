namespace Cavaxis.Arteries.Grid;

/// <summary>What the flow is, cell by cell, and what it is at the faces during a step.</summary>
internal sealed class FlowState
{
    public FlowState(CellGrid grid)
    {
        int length = grid.Length;
        Area = new double[length];
        Velocity = new double[length];
        Root = new double[length];
        WallRise = new double[length];
        Slowness = new double[length];
        Pressure = new double[length];
        Flow = new double[length];
        Body = new double[length];
        BodyHalf = new double[length];
        BodyRate = new double[length];
        Drag = new double[length];
        AreaMinus = new double[length];
        FlowMinus = new double[length];
        HeadMinus = new double[length];
        AdmittanceMinus = new double[length];
        AreaPlus = new double[length];
        FlowPlus = new double[length];
        HeadPlus = new double[length];
        AdmittancePlus = new double[length];
        FaceFlow = new double[length];
        FaceHead = new double[length];
    }

    /// <summary>Area of the blood, m².</summary>
    public double[] Area { get; }

    /// <summary>Velocity, m/s.</summary>
    public double[] Velocity { get; }

    /// <summary>√W, root of the area that the wall encloses, m.</summary>
    public double[] Root { get; }

    /// <summary>dP/dW of the wall, Pa/m².</summary>
    public double[] WallRise { get; }

    /// <summary>One over the wave speed, s/m.</summary>
    public double[] Slowness { get; }

    /// <summary>Pressure of the elastic wall, Pa.</summary>
    public double[] Pressure { get; }

    /// <summary>Flow, m³/s.</summary>
    public double[] Flow { get; }

    /// <summary>Area of bodies in the lumen at the start of the step, m².</summary>
    public double[] Body { get; }

    /// <summary>The same in the middle of the step.</summary>
    public double[] BodyHalf { get; }

    /// <summary>Its change during the step, m²/s.</summary>
    public double[] BodyRate { get; }

    /// <summary>Rate of friction times area, m²/s.</summary>
    public double[] Drag { get; }

    /// <summary>Area at the proximal face of a cell in the middle of the step, seen from within, m².</summary>
    public double[] AreaMinus { get; }

    /// <summary>Flow there, m³/s.</summary>
    public double[] FlowMinus { get; }

    /// <summary>Head U²/2 + P/ρ there, m²/s².</summary>
    public double[] HeadMinus { get; }

    /// <summary>Area over wave speed there, m·s.</summary>
    public double[] AdmittanceMinus { get; }

    /// <summary>Area at the distal face of a cell, m².</summary>
    public double[] AreaPlus { get; }

    /// <summary>Flow there, m³/s.</summary>
    public double[] FlowPlus { get; }

    /// <summary>Head there, m²/s².</summary>
    public double[] HeadPlus { get; }

    /// <summary>Area over wave speed there, m·s.</summary>
    public double[] AdmittancePlus { get; }

    /// <summary>Flow through a face during the step, m³/s.</summary>
    public double[] FaceFlow { get; }

    /// <summary>Head at a face during the step, m²/s².</summary>
    public double[] FaceHead { get; }
}
