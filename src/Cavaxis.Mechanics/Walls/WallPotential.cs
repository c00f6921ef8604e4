using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Cavaxis.Anatomy.Lumens;
using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Matrices;
using Cavaxis.Mechanics.Rods;
using static Cavaxis.Mechanics.Walls.NodeSums;

namespace Cavaxis.Mechanics.Walls;

/// <summary>
/// Contact and friction of nodes as a potential. Contact: augmented Lagrangian (1/2k)⟨λ + k p⟩², p the penetration.
/// Friction: see <see cref="WallFriction"/>.
/// </summary>
internal sealed class WallPotential
{
    /// <summary>A node that enters and leaves the model of one step more often than this does so without end.</summary>
    private const int MostChanges = 2;

    private readonly WallTouch touch = new();
    private readonly WallFriction friction = new();
    private double stiffness;
    private int count;
    private bool[] free = [];
    private Foreseen[] foreseen = [];
    private (int Wall, int Friction)[] changes = [];

    /// <summary>Whether there is a wall.</summary>
    public bool Exists { get; private set; }

    /// <summary>Takes the wall of a task.</summary>
    /// <param name="wall">The wall, or none.</param>
    /// <param name="radii">Outer radius of each node, mm.</param>
    /// <param name="touches">Nodes that may touch the wall.</param>
    /// <param name="grips">What it remembers; empty for nothing.</param>
    /// <param name="coefficients">Friction of each node; empty for that of the wall.</param>
    /// <param name="start">Where the nodes stand.</param>
    /// <param name="stiffnessNPerMm">Penalty k.</param>
    /// <param name="giveMm">Give ε.</param>
    public void Load(
        Wall? wall, ImmutableArray<double> radii, ReadOnlySpan<bool> touches, ImmutableArray<NodeGrip> grips, ImmutableArray<double> coefficients, RodPose start,
        double stiffnessNPerMm, double giveMm)
    {
        (Exists, stiffness, count) = (wall is not null, stiffnessNPerMm, radii.Length);
        if (free.Length < count)
        {
            int room = count + 32;
            (free, foreseen, changes) = (new bool[room], new Foreseen[room], new (int, int)[room]);
        }

        if (wall is null)
        {
            return;
        }

        touch.Load(wall.Lumen, stiffness, count);
        friction.Load(giveMm, count);
        for (int i = 0; i < count; i++)
        {
            free[i] = touches[i];
            LumenPoint at = touch.Begin(i, start.Nodes[i], radii[i]);
            friction.Begin(
                i, coefficients.IsEmpty ? wall.Friction : coefficients[i], grips.IsEmpty ? new NodeGrip(start.Nodes[i], 0, at.Outward) : grips[i]);
        }
    }

    /// <summary>Energy of contact and friction, N mm; that of the multipliers at rest is left in.</summary>
    public double Energy(RodPose pose)
    {
        if (!Exists)
        {
            return 0;
        }

        double sum = 0;
        for (int i = 0; i < count; i++)
        {
            if (!free[i])
            {
                continue;
            }

            Vector3D x = pose.Nodes[i];
            if (touch.TryTouch(i, x, out _, out double force))
            {
                sum += force * force / (2 * stiffness);
            }

            sum += friction.Energy(i, x);
        }

        return sum;
    }

    /// <summary>Adds first and second derivatives.</summary>
    public void AddDerivatives(RodPose pose, double[] gradient, BandMatrix hessian)
    {
        if (!Exists)
        {
            return;
        }

        for (int i = 0; i < count; i++)
        {
            if (!free[i])
            {
                continue;
            }

            Vector3D x = pose.Nodes[i];
            if (touch.TryTouch(i, x, out LumenPoint at, out double force))
            {
                AddForce(gradient, i, force, at.Outward);
                AddOuter(hessian, i, stiffness, at.Outward);
                touch.AddCurvature(hessian, i, force, x, at.Outward);
            }

            friction.AddDerivatives(i, x, gradient, hessian);
        }
    }

    /// <summary>
    /// Looks ahead along a step of Newton's method: nodes that would enter the wall are given its spring in the model, and
    /// nodes that would leave it lose theirs, so that the next solution of the model stops at the wall; likewise friction.
    /// </summary>
    /// <param name="pose">Pose that the step starts from.</param>
    /// <param name="direction">The step.</param>
    /// <param name="share">How much of it will be tried.</param>
    /// <param name="begins">True for the first look of a step.</param>
    /// <param name="gradient">Gradient of the model, changed with it.</param>
    /// <param name="hessian">Second derivatives of the model, changed with it.</param>
    /// <param name="held">Coordinates that are held: their nodes are left alone.</param>
    /// <returns>Whether the model was changed.</returns>
    public bool LookAhead(RodPose pose, double[] direction, double share, bool begins, double[] gradient, BandMatrix hessian, bool[] held)
    {
        bool changed = false;
        for (int i = 0; i < count && Exists; i++)
        {
            if (!free[i] || held[4 * i] || held[(4 * i) + 1] || held[(4 * i) + 2])
            {
                continue;
            }

            Vector3D step = new(direction[4 * i], direction[(4 * i) + 1], direction[(4 * i) + 2]);
            Foreseen f = begins ? touch.Now(i, pose.Nodes[i]) : foreseen[i];
            bool touches = f.IsKnown ? f.DepthMm + f.Outward.Dot(step) > 0 : touch.TryForesee(i, pose.Nodes[i], share * step, out f);
            (int wall, int sliding) = begins ? default : changes[i];
            if (touches != f.IsModelled && wall < MostChanges)
            {
                double sign = touches ? stiffness : -stiffness;
                AddOuter(hessian, i, sign, f.Outward);
                AddForce(gradient, i, sign * f.DepthMm, f.Outward);
                f = f with { IsModelled = touches };
                changed = true;
                wall++;
            }

            foreseen[i] = f;
            if (sliding < MostChanges && friction.LookAhead(i, pose.Nodes[i], step, gradient, hessian))
            {
                changed = true;
                sliding++;
            }

            changes[i] = (wall, sliding);
        }

        return changed;
    }

    /// <summary>
    /// Ends a round: the normal forces found become those of the friction, and where the rod lies too deep the multipliers
    /// take over the force.
    /// </summary>
    /// <param name="pose">Pose at rest with what was held.</param>
    /// <param name="allowedMm">Penetration allowed.</param>
    /// <param name="share">How much of the way friction goes to its new normal forces, above 0 to 1.</param>
    /// <returns>Largest penetration, mm, and largest change of a friction force, N.</returns>
    public (double DepthMm, double ChangeN) Renew(RodPose pose, double allowedMm, double share)
    {
        double depth = Depth(pose);
        double change = 0;
        for (int i = 0; i < count && Exists; i++)
        {
            if (!free[i])
            {
                continue;
            }

            bool touches = touch.TryTouch(i, pose.Nodes[i], out LumenPoint at, out double force);
            if (depth > allowedMm && ((touches && touch.Depth(i, at) > allowedMm) || touch.Multiplier(i) > 0))
            {
                touch.Hold(i, force);
            }

            change = Math.Max(change, friction.Renew(i, pose.Nodes[i], force, touches ? at.Outward.Unit : null, share));
        }

        return (depth, change);
    }

    /// <summary>Largest penetration of a pose, mm.</summary>
    public double Depth(RodPose pose)
    {
        double depth = 0;
        for (int i = 0; i < count && Exists; i++)
        {
            depth = free[i] && touch.TryTouch(i, pose.Nodes[i], out LumenPoint at, out _) ? Math.Max(depth, touch.Depth(i, at)) : depth;
        }

        return depth;
    }

    /// <summary>Whether the rod is wider than the lumen at a node.</summary>
    public bool IsPinched(RodPose pose) => Exists && Enumerable.Range(0, count).Any(i => free[i] && touch.IsPinched(i, pose.Nodes[i]));

    /// <summary>Forces of the wall on all nodes that it touches.</summary>
    public ImmutableArray<NodeContact> Contacts(RodPose pose)
    {
        ImmutableArray<NodeContact>.Builder contacts = ImmutableArray.CreateBuilder<NodeContact>();
        for (int i = 0; i < count && Exists; i++)
        {
            if (free[i] && touch.TryTouch(i, pose.Nodes[i], out LumenPoint at, out double force))
            {
                Vector3D onRod = (-force * at.Outward) - friction.Force(i, pose.Nodes[i]);
                contacts.Add(new NodeContact(i, force, onRod, touch.Depth(i, at), friction.Slides(i, pose.Nodes[i])));
            }
        }

        return contacts.ToImmutable();
    }

    /// <summary>What is remembered: anchors are drawn after nodes that slid, so that they trail by the give.</summary>
    public ImmutableArray<NodeGrip> Grips(RodPose pose)
    {
        if (!Exists)
        {
            return [];
        }

        NodeGrip[] kept = new NodeGrip[count];
        for (int i = 0; i < count; i++)
        {
            kept[i] = friction.Memory(i, pose.Nodes[i], free[i] && touch.TryTouch(i, pose.Nodes[i], out _, out _));
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(kept);
    }
}
