namespace Cavaxis.Mechanics.Relaxing;

/// <summary>How exactly and how long a rod is brought to rest. Numbers of the method, not of the body.</summary>
public sealed record RelaxationSettings
{
    /// <summary>Largest force left on a node, N; torques are divided by the mean length of an edge.</summary>
    public double ToleranceN { get; init; } = 1e-7;

    /// <summary>Largest change of a friction force between two rounds, N.</summary>
    public double FrictionToleranceN { get; init; } = 1e-4;

    /// <summary>Penetration allowed, mm.</summary>
    public double PenetrationMm { get; init; } = 0.05;

    /// <summary>Penalty of the contact, N/mm for each node.</summary>
    public double WallStiffnessNPerMm { get; init; } = 20;

    /// <summary>Slide at which friction is fully used, mm.</summary>
    public double FrictionGiveMm { get; init; } = 0.02;

    /// <summary>Most Newton steps of one round.</summary>
    public int MostSteps { get; init; } = 400;

    /// <summary>Most rounds of renewed contact forces.</summary>
    public int MostRounds { get; init; } = 40;

    /// <summary>Largest turn of an edge in one Newton step, rad.</summary>
    public double LargestTurnRad { get; init; } = 0.5;

    /// <summary>Whether a state that is at rest but not stable, such as a straight rod under more than its buckling load, is left.</summary>
    public bool LeavesSaddles { get; init; } = true;

    /// <summary>Whether the potential after every step is kept.</summary>
    public bool KeepsTrace { get; init; }
}
