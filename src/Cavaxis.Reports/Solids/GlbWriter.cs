using System.Numerics;
using System.Runtime.InteropServices;
using Cavaxis.Anatomy.Space;
using Cavaxis.Reports.Drawings;
using SharpGLTF.Memory;
using SharpGLTF.Schema2;

namespace Cavaxis.Reports.Solids;

/// <summary>
/// A model as binary glTF 2.0 (ISO/IEC 12113): metres, y to the head and z to the front, so that a viewer opens it from the front
/// with the patient's left at the right of the screen.
/// </summary>
public static class GlbWriter
{
    private const float MetresPerMm = 0.001f;

    /// <summary>Writes it.</summary>
    /// <param name="model">The model.</param>
    /// <returns>The file; the same model gives the same bytes.</returns>
    public static byte[] Write(SolidModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        ModelRoot root = ModelRoot.CreateModel();
        root.Asset.Generator = "Cavaxis";
        root.Asset.Copyright = model.Caution;
        Scene scene = root.UseScene(model.Name);
        foreach (SolidPart part in model.Parts)
        {
            MeshPrimitive body = Begin(root, scene, part.Name, PrimitiveType.TRIANGLES, part.Colour, part.Opacity, unlit: false);
            body.SetVertexAccessor("POSITION", Vectors(root, part.Surface.PointsMm, MetresPerMm));
            body.SetVertexAccessor("NORMAL", Vectors(root, part.Surface.Outward, 1));
            int[] corners = [.. part.Surface.Corners];
            Accessor indices = root.CreateAccessor();
            indices.SetIndexData(root.UseBufferView(MemoryMarshal.AsBytes(corners.AsSpan()).ToArray(), 0, null, 0, BufferMode.ELEMENT_ARRAY_BUFFER), 0, corners.Length, IndexEncodingType.UNSIGNED_INT);
            body.SetIndexAccessor(indices);
        }

        foreach (SolidPath path in model.Paths)
        {
            Begin(root, scene, path.Name, PrimitiveType.LINE_STRIP, path.Colour, 1, unlit: true).SetVertexAccessor("POSITION", Vectors(root, path.PointsMm, MetresPerMm));
        }

        root.MergeBuffers();
        return root.WriteGLB().ToArray();
    }

    private static MeshPrimitive Begin(ModelRoot root, Scene scene, string name, PrimitiveType kind, Colour colour, double opacity, bool unlit)
    {
        SharpGLTF.Schema2.Mesh mesh = root.CreateMesh(name);
        MeshPrimitive primitive = mesh.CreatePrimitive();
        primitive.DrawPrimitiveType = kind;
        Material material = root.CreateMaterial(name);
        material.InitializePBRMetallicRoughness();
        if (unlit)
        {
            material.InitializeUnlit();
        }

        material.DoubleSided = opacity < 1;
        material.Alpha = opacity < 1 ? AlphaMode.BLEND : AlphaMode.OPAQUE;
        MaterialChannel tone = material.FindChannel("BaseColor")!.Value;
        tone.Color = new Vector4(Linear(colour.Red), Linear(colour.Green), Linear(colour.Blue), (float)opacity);
        primitive.Material = material;
        Node node = scene.CreateNode(name);
        node.Mesh = mesh;
        return primitive;
    }

    private static Accessor Vectors(ModelRoot root, IReadOnlyList<Vector3D> vectors, float scale)
    {
        Vector3[] turned = [.. vectors.Select(v => scale * new Vector3((float)v.X, (float)v.Z, (float)-v.Y))];
        Accessor accessor = root.CreateAccessor();
        accessor.SetVertexData(root.UseBufferView(MemoryMarshal.AsBytes(turned.AsSpan()).ToArray(), 0, null, 0, BufferMode.ARRAY_BUFFER), 0, turned.Length, AttributeFormat.Float3);
        return accessor;
    }

    /// <summary>A colour of a screen as the share of light that glTF wants (IEC 61966-2-1).</summary>
    private static float Linear(byte tone)
    {
        double share = tone / 255.0;
        return (float)(share <= 0.04045 ? share / 12.92 : Math.Pow((share + 0.055) / 1.055, 2.4));
    }
}
