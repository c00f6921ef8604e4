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
/// Friction: Coulomb with the normal force and normal of the last round held (lagged), so that it has a potential too:
/// μN(|u| − ε/2) for a slide |u| ≥ ε from the anchor, μN u²/2ε for less. The give ε stands for the contact's elasticity.
/// </summary>
internal sealed class WallPotential
{
    private readonly WallTouch touch = new();
    private double[] friction = [];
    private double stiffness;
    private double give;
    private int count;
    private bool[] free = [];
    private NodeGrip[] grip = [];
    private Foreseen[] foreseen = [];

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
        (Exists, stiffness, give, count) = (wall is not null, stiffnessNPerMm, giveMm, radii.Length);
        if (free.Length < count)
        {
            int room = count + 32;
            (free, grip, friction, foreseen) = (new bool[room], new NodeGrip[room], new double[room], new Foreseen[room]);
        }

        if (wall is null)
        {
            return;
        }

        touch.Load(wall.Lumen, stiffness, count);
        for (int i = 0; i < count; i++)
        {
            free[i] = touches[i];
            friction[i] = coefficients.IsEmpty ? wall.Friction : coefficients[i];
            LumenPoint at = touch.Begin(i, start.Nodes[i], radii[i]);
            grip[i] = grips.IsEmpty ? new NodeGrip(start.Nodes[i], 0, at.Outward) : grips[i];
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

            double hold = friction[i] * grip[i].ForceN;
            if (hold > 0)
            {
                double slide = Slide(i, x).Length;
                sum += slide < give ? hold * slide * slide / (2 * give) : hold * (slide - (0.5 * give));
            }
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

            if (friction[i] * grip[i].ForceN > 0)
            {
                AddFriction(gradient, hessian, i, x);
            }
        }
    }

    /// <summary>
    /// Looks ahead along a step of Newton's method: nodes that would enter the wall are given its spring in the model, and
    /// nodes that would leave it lose theirs, so that the next solution of the model stops at the wall.
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
            if (touches != f.IsModelled)
            {
                double sign = touches ? stiffness : -stiffness;
                AddOuter(hessian, i, sign, f.Outward);
                AddForce(gradient, i, sign * f.DepthMm, f.Outward);
                f = f with { IsModelled = touches };
                changed = true;
            }

            foreseen[i] = f;
        }

        return changed;
    }

    /// <summary>
    /// Ends a round: the normal forces found become those of the friction, and where the rod lies too deep the multipliers
    /// take over the force.
    /// </summary>
    /// <param name="pose">Pose at rest with what was held.</param>
    /// <param name="allowedMm">Penetration allowed.</param>
    /// <returns>Largest penetration, mm, and largest change of a friction force, N.</returns>
    public (double DepthMm, double ChangeN) Renew(RodPose pose, double allowedMm)
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

            Vector3D before = friction[i] * FrictionForce(i, pose.Nodes[i]);
            grip[i] = grip[i] with { ForceN = force, Outward = touches ? at.Outward.Unit : grip[i].Outward };
            change = Math.Max(change, ((friction[i] * FrictionForce(i, pose.Nodes[i])) - before).Length);
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
                Vector3D onRod = (-force * at.Outward) - (friction[i] * FrictionForce(i, pose.Nodes[i]));
                contacts.Add(new NodeContact(i, force, onRod, touch.Depth(i, at), Slide(i, pose.Nodes[i]).Length >= give));
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
            bool touches = free[i] && touch.TryTouch(i, pose.Nodes[i], out _, out _);
            Vector3D slide = Slide(i, pose.Nodes[i]);
            double length = slide.Length;
            Vector3D trail = !touches ? default : length > give ? give / length * slide : slide;
            kept[i] = new NodeGrip(pose.Nodes[i] - trail, touches ? grip[i].ForceN : 0, grip[i].Outward);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(kept);
    }

    /// <summary>Friction by the normal force held, for a coefficient of one.</summary>
    private Vector3D FrictionForce(int i, Vector3D x)
    {
        Vector3D slide = Slide(i, x);
        double length = slide.Length;
        return grip[i].ForceN / Math.Max(length, give) * slide;
    }

    private Vector3D Slide(int i, Vector3D x)
    {
        Vector3D way = x - grip[i].Anchor;
        return way - (way.Dot(grip[i].Outward) * grip[i].Outward);
    }

    private void AddFriction(double[] gradient, BandMatrix hessian, int i, Vector3D x)
    {
        double hold = friction[i] * grip[i].ForceN;
        Vector3D normal = grip[i].Outward;
        Vector3D slide = Slide(i, x);
        double length = slide.Length;
        double slope = hold / Math.Max(length, give);
        AddForce(gradient, i, slope, slide);
        AddUnit(hessian, i, slope);
        AddOuter(hessian, i, -slope, normal);
        if (length >= give)
        {
            AddOuter(hessian, i, -slope / (length * length), slide);
        }
    }
}
