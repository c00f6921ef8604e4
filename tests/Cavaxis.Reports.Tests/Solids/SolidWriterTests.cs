using System.Buffers.Binary;
using System.Numerics;
using Cavaxis.Anatomy.Meshes;
using Cavaxis.Anatomy.Space;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Solids;
using SharpGLTF.Schema2;
using SharpGLTF.Validation;

namespace Cavaxis.Reports.Tests.Solids;

public class SolidWriterTests
{
    private static readonly SolidModel Model = new(
        "Two tubes",
        Samples.Caution,
        [
            new SolidPart("Vein", PathSurface.Of([new Vector3D(0, 0, 0), new Vector3D(0, 0, -200)], 10, 24), Colour.Lumen, 0.4),
            new SolidPart("Cannula", PathSurface.Of([new Vector3D(0, 0, 0), new Vector3D(5, -20, -100)], 4, 12), Colour.Drainage),
        ],
        [new SolidPath("Wire", [new Vector3D(0, 0, 0), new Vector3D(1, 2, -50), new Vector3D(3, 4, -90)], Colour.Refused)]);

    /// <summary>Read by the library's strict check of ISO/IEC 12113.</summary>
    [Fact]
    public void A_binary_gltf_is_valid_in_metres_with_the_head_up_and_the_front_towards_the_viewer()
    {
        ModelRoot read = ModelRoot.ParseGLB(GlbWriter.Write(Model), new ReadSettings { Validation = ValidationMode.Strict });
        Assert.Equal(["Vein", "Cannula", "Wire"], read.DefaultScene.VisualChildren.Select(static n => n.Name));
        Assert.Equal(Samples.Caution, read.Asset.Copyright);
        Assert.Equal(AlphaMode.BLEND, read.LogicalMaterials[0].Alpha);
        Assert.Equal(AlphaMode.OPAQUE, read.LogicalMaterials[1].Alpha);
        MeshPrimitive wire = read.LogicalMeshes[2].Primitives[0];
        Assert.Equal(PrimitiveType.LINE_STRIP, wire.DrawPrimitiveType);
        Vector3 last = wire.GetVertexAccessor("POSITION").AsVector3Array()[2];

        // x stays, what lay towards the head goes up, what lay to the back goes away from the viewer.
        Assert.Equal(0.003f, last.X, 1e-6f);
        Assert.Equal(-0.09f, last.Y, 1e-6f);
        Assert.Equal(-0.004f, last.Z, 1e-6f);
    }

    [Fact]
    public void Triangles_of_the_gltf_hold_the_volume_of_the_surface_and_face_outward()
    {
        ModelRoot read = ModelRoot.ParseGLB(GlbWriter.Write(Model));
        for (int part = 0; part < 2; part++)
        {
            MeshPrimitive primitive = read.LogicalMeshes[part].Primitives[0];
            IList<Vector3> points = primitive.GetVertexAccessor("POSITION").AsVector3Array();
            double volume = primitive.GetTriangleIndices().Sum(t => Vector3.Dot(points[t.A], Vector3.Cross(points[t.B], points[t.C])) / 6.0);
            Assert.Equal(1, volume * 1e9 / Model.Parts[part].Surface.VolumeMm3, 1e-4);
        }
    }

    [Fact]
    public void The_same_model_gives_the_same_bytes()
    {
        Assert.Equal(GlbWriter.Write(Model), GlbWriter.Write(Model));
        Assert.Equal(StlWriter.Write(Model), StlWriter.Write(Model));
    }

    [Fact]
    public void A_binary_stl_has_its_count_the_volume_in_cubic_millimetres_and_does_not_begin_like_the_format_in_words()
    {
        byte[] file = StlWriter.Write(Model);
        Assert.NotEqual("solid", System.Text.Encoding.ASCII.GetString(file, 0, 5));
        int count = BinaryPrimitives.ReadInt32LittleEndian(file.AsSpan(80));
        Assert.Equal(Model.Parts.Sum(static p => p.Surface.TriangleCount), count);
        Assert.Equal(84 + (50 * count), file.Length);
        double volume = 0;
        for (int i = 0; i < count; i++)
        {
            Vector3[] v = [.. Enumerable.Range(0, 4).Select(k => Read(file, 84 + (50 * i) + (12 * k)))];
            volume += Vector3.Dot(v[1], Vector3.Cross(v[2], v[3])) / 6.0;
            Assert.True(Vector3.Dot(v[0], Vector3.Cross(v[2] - v[1], v[3] - v[1])) > 0);
        }

        Assert.Equal(1, volume / Model.Parts.Sum(static p => p.Surface.VolumeMm3), 1e-4);
    }

    private static Vector3 Read(byte[] file, int at) => new(
        BinaryPrimitives.ReadSingleLittleEndian(file.AsSpan(at)),
        BinaryPrimitives.ReadSingleLittleEndian(file.AsSpan(at + 4)),
        BinaryPrimitives.ReadSingleLittleEndian(file.AsSpan(at + 8)));
}
