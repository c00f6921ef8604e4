using Cavaxis.Anatomy.Space;
using Cavaxis.Mechanics.Matrices;
using static Cavaxis.Mechanics.Walls.NodeSums;

namespace Cavaxis.Mechanics.Walls;

/// <summary>
/// Coulomb's friction of nodes with the normal force and normal of the last round held (lagged), so that it has a
/// potential: μN(|u| − ε/2) for a slide |u| ≥ ε from the anchor, μN u²/2ε for less. The give ε stands for the elasticity of
/// the contact.
/// </summary>
internal sealed class WallFriction
{
    private double give;
    private double[] coefficient = [];
    private NodeGrip[] grip = [];
    private (bool Sticks, Vector3D At)[] model = [];

    /// <summary>Takes the give and a number of nodes.</summary>
    public void Load(double giveMm, int count)
    {
        give = giveMm;
        if (grip.Length < count)
        {
            (coefficient, grip, model) = (new double[count + 32], new NodeGrip[count + 32], new (bool, Vector3D)[count + 32]);
        }
    }

    /// <summary>Takes a node.</summary>
    public void Begin(int i, double friction, NodeGrip memory) => (coefficient[i], grip[i]) = (friction, memory);

    /// <summary>Energy at a node.</summary>
    public double Energy(int i, Vector3D x)
    {
        double hold = Hold(i);
        if (hold <= 0)
        {
            return 0;
        }

        double slide = Slide(i, x).Length;
        return slide < give ? hold * slide * slide / (2 * give) : hold * (slide - (0.5 * give));
    }

    /// <summary>Force that the wall's friction takes from a node: against its slide.</summary>
    public Vector3D Force(int i, Vector3D x)
    {
        Vector3D slide = Slide(i, x);
        return Hold(i) / Math.Max(slide.Length, give) * slide;
    }

    /// <summary>Whether the friction of a node is fully used.</summary>
    public bool Slides(int i, Vector3D x) => Slide(i, x).Length >= give;

    /// <summary>Adds first and second derivatives at a node.</summary>
    public void AddDerivatives(int i, Vector3D x, double[] gradient, BandMatrix hessian)
    {
        if (Hold(i) > 0)
        {
            Vector3D slide = Slide(i, x);
            model[i] = (slide.Length < give, slide);
            AddModel(i, 1, slide, gradient, hessian);
        }
    }

    /// <summary>
    /// Looks ahead along a step: a node that would come to stick is given that law in the model, and one that would break
    /// loose that of sliding, as it is where the step ends.
    /// </summary>
    /// <returns>Whether the model was changed.</returns>
    public bool LookAhead(int i, Vector3D x, Vector3D step, double[] gradient, BandMatrix hessian)
    {
        if (Hold(i) <= 0)
        {
            return false;
        }

        Vector3D slide = Slide(i, x);
        Vector3D ahead = Slide(i, x + step);
        bool sticks = ahead.Length < give;
        if (sticks == model[i].Sticks)
        {
            return false;
        }

        AddModel(i, -1, slide, gradient, hessian);
        model[i] = (sticks, ahead);
        AddModel(i, 1, slide, gradient, hessian);
        return true;
    }

    /// <summary>Holds another normal force, or one on the way to it.</summary>
    /// <returns>Change of the friction force to that of the whole way, N.</returns>
    public double Renew(int i, Vector3D x, double normalN, Vector3D? outward, double share)
    {
        Vector3D before = Force(i, x);
        double held = grip[i].ForceN;
        grip[i] = grip[i] with { ForceN = normalN, Outward = outward ?? grip[i].Outward };
        double change = (Force(i, x) - before).Length;
        grip[i] = grip[i] with { ForceN = held + (share * (normalN - held)) };
        return change;
    }

    /// <summary>What is remembered of a node: its anchor is drawn after it, so that it trails by the give at most.</summary>
    public NodeGrip Memory(int i, Vector3D x, bool touches)
    {
        Vector3D slide = Slide(i, x);
        double length = slide.Length;
        Vector3D trail = !touches ? default : length > give ? give / length * slide : slide;
        return new NodeGrip(x - trail, touches ? grip[i].ForceN : 0, grip[i].Outward);
    }

    private double Hold(int i) => coefficient[i] * grip[i].ForceN;

    private Vector3D Slide(int i, Vector3D x)
    {
        Vector3D way = x - grip[i].Anchor;
        return way - (way.Dot(grip[i].Outward) * grip[i].Outward);
    }

    /// <summary>The model of a node about its slide: sticking is a spring; sliding is taken about the slide in the model.</summary>
    private void AddModel(int i, double sign, Vector3D slide, double[] gradient, BandMatrix hessian)
    {
        Vector3D at = model[i].At;
        double length = Math.Max(at.Length, give);
        double slope = sign * Hold(i) / length;
        AddUnit(hessian, i, slope);
        AddOuter(hessian, i, -slope, grip[i].Outward);
        if (model[i].Sticks)
        {
            AddForce(gradient, i, slope, slide);
            return;
        }

        Vector3D along = at / length;
        AddOuter(hessian, i, -slope, along);
        AddForce(gradient, i, slope * length, along);
        Vector3D apart = slide - at;
        AddForce(gradient, i, slope, apart - (apart.Dot(along) * along));
    }
}
