using Cavaxis.Mechanics.Rods;
using Cavaxis.Quantities.Faults;

namespace Cavaxis.Mechanics.Relaxing;

/// <summary>Brings rods to rest and counts the ways in which they are not stable.</summary>
public static class Relaxation
{
    /// <summary>Brings a rod to a state of least potential near its start.</summary>
    /// <param name="task">Rod, start, supports, loads and wall.</param>
    /// <param name="settings">How exactly; the usual settings where not given.</param>
    /// <returns>The rod at rest, or the named reason why it is not and what was reached.</returns>
    /// <exception cref="InputFaultException">Lists of unequal length.</exception>
    public static RelaxationResult Relax(RelaxationTask task, RelaxationSettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(task);
        return new Relaxer().Relax(task, settings ?? new RelaxationSettings());
    }

    /// <summary>Independent small movements from the start of a task along which the potential falls to second order: none
    /// where a rod at rest is stable.</summary>
    /// <param name="task">Rod, start, supports, loads and wall.</param>
    /// <returns>Negative eigenvalues of the second derivatives.</returns>
    /// <exception cref="InputFaultException">Lists of unequal length.</exception>
    public static int UnstableModes(RelaxationTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        RodSystem system = new();
        RodPose pose = new();
        system.Load(task, pose, new RelaxationSettings());
        system.Differentiate(pose);
        return system.Hessian.NegativeCount(system.NoticeableCurvature, system.NoticeableAngleCurvature);
    }
}
