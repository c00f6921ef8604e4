namespace Cavaxis.Arteries.Transport;

/// <summary>
/// The volumes that pass every face while the flow is solved, written down step by step; several steps of the flow make one step of the transport, because waves are faster than
/// blood.
/// </summary>
internal sealed class FlowRecording
{
    private readonly List<double[]> faceFlows = [];
    private readonly List<double[]> onwardFlows = [];
    private readonly List<double[]> sideFlows = [];
    private readonly List<double> timeSteps = [];
    private readonly double mostShift;
    private double[]? face;
    private double[]? onward;
    private double[]? side;
    private double time;
    private double shift;

    /// <summary>Nothing written yet.</summary>
    /// <param name="mostShift">How many cells blood may move in one step of the transport.</param>
    public FlowRecording(double mostShift) => this.mostShift = mostShift;

    /// <summary>Steps of the transport.</summary>
    public int Count => timeSteps.Count;

    /// <summary>Length of a step, s.</summary>
    public double TimeStep(int step) => timeSteps[step];

    /// <summary>Mean flow through every face over a step, m³/s.</summary>
    public double[] FaceFlow(int step) => faceFlows[step];

    /// <summary>Mean flow onward from every end.</summary>
    public double[] OnwardFlow(int step) => onwardFlows[step];

    /// <summary>Mean flow of every side place.</summary>
    public double[] SideFlow(int step) => sideFlows[step];

    /// <summary>How far blood moved in the step that comes, in cells; ends the step of the transport where it would be too far.</summary>
    public void Expect(double nextShift)
    {
        if (time > 0 && shift + nextShift > mostShift)
        {
            Close();
        }

        shift += nextShift;
    }

    /// <summary>Adds a step of the flow.</summary>
    public void Add(double[] faceFlow, double[] onwardFlow, double[] sideFlow, double timeStep)
    {
        face ??= new double[faceFlow.Length];
        onward ??= new double[onwardFlow.Length];
        side ??= new double[sideFlow.Length];
        Gather(face, faceFlow, timeStep);
        Gather(onward, onwardFlow, timeStep);
        Gather(side, sideFlow, timeStep);
        time += timeStep;
    }

    /// <summary>Ends the step of the transport that is being gathered.</summary>
    public void Close()
    {
        if (face is null || onward is null || side is null)
        {
            return;
        }

        foreach (double[] gathered in (double[][])[face, onward, side])
        {
            for (int i = 0; i < gathered.Length; i++)
            {
                gathered[i] /= time;
            }
        }

        faceFlows.Add(face);
        onwardFlows.Add(onward);
        sideFlows.Add(side);
        timeSteps.Add(time);
        (face, onward, side, time, shift) = (null, null, null, 0, 0);
    }

    private static void Gather(double[] to, double[] from, double timeStep)
    {
        for (int i = 0; i < to.Length; i++)
        {
            to[i] += timeStep * from[i];
        }
    }
}
