using System.Buffers.Binary;
using Cavaxis.Reports.Drawings;
using Cavaxis.Reports.Png;
using SkiaSharp;

namespace Cavaxis.Reports.Tests.Drawings;

public class PngWriterTests
{
    [Fact]
    public void The_file_begins_as_the_standard_says_and_has_the_size_of_the_paper()
    {
        byte[] file = PngWriter.Write(Samples.EveryItem());
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A], file[..8]);
        Assert.Equal("IHDR"u8.ToArray(), file[12..16]);
        Assert.Equal((100 * PngWriter.PixelsPerMm, 80 * PngWriter.PixelsPerMm), (Whole(file, 16), Whole(file, 20)));
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes() =>
        Assert.Equal(PngWriter.Write(Samples.Chart().Build()), PngWriter.Write(Samples.Chart().Build()));

    [Fact]
    public void Every_text_and_every_end_of_a_line_leaves_ink_where_the_drawing_has_it()
    {
        Drawing drawing = Samples.Chart().Build();
        using SKBitmap picture = SKBitmap.Decode(PngWriter.Write(drawing));
        Text[] texts = [.. drawing.Items.OfType<Text>().Where(static t => !string.IsNullOrWhiteSpace(t.Content))];
        Assert.NotEmpty(texts);
        Assert.All(texts, t => Assert.True(InkIn(picture, TextMetrics.BoundsOf(t)) > 10, t.Content));
        Point[] ends = [.. drawing.Items.OfType<Polyline>().Where(static l => l.Style.Dash == Dash.Solid).SelectMany(static l => new[] { l.Points[0], l.Points[^1] })];
        Assert.NotEmpty(ends);
        Assert.All(ends, p => Assert.True(InkIn(picture, new Box(p.X - 0.5, p.Y - 0.5, p.X + 0.5, p.Y + 0.5)) > 0));
    }

    [Fact]
    public void An_empty_drawing_is_white_paper()
    {
        using SKBitmap picture = SKBitmap.Decode(PngWriter.Write(new Drawing(12.01, 5, "Nothing", "Nothing.", [])));
        Assert.Equal((97, 40), (picture.Width, picture.Height));
        Assert.Equal(0, InkIn(picture, new Box(0, 0, 12, 5)));
    }

    [Fact]
    public void A_filled_box_is_filled_with_its_colour_and_no_more()
    {
        Drawing drawing = new(10, 10, "Box", "A box.", [new Rectangle(new Box(2, 2, 8, 8), Style.Area(Colour.Refused))]);
        using SKBitmap picture = SKBitmap.Decode(PngWriter.Write(drawing));
        SKColor inside = picture.GetPixel(5 * PngWriter.PixelsPerMm, 5 * PngWriter.PixelsPerMm);
        Assert.Equal((Colour.Refused.Red, Colour.Refused.Green, Colour.Refused.Blue), (inside.Red, inside.Green, inside.Blue));
        Assert.Equal(36 * PngWriter.PixelsPerMm * PngWriter.PixelsPerMm, InkIn(picture, new Box(0, 0, 10, 10)));
    }

    [Fact]
    public void A_turned_text_runs_upward()
    {
        Drawing drawing = new(20, 20, "Turned", "A turned word.", [new Text(new(10, 15), "Turned", 9, TextAnchor.Start, -90)]);
        using SKBitmap picture = SKBitmap.Decode(PngWriter.Write(drawing));
        Assert.True(InkIn(picture, new Box(6, 2, 11, 15)) > 50);
        Assert.Equal(0, InkIn(picture, new Box(0, 16, 20, 20)));
        Assert.Equal(0, InkIn(picture, new Box(12, 0, 20, 20)));
    }

    [Theory]
    [MemberData(nameof(Samples.HostileTexts), MemberType = typeof(Samples))]
    public void Hostile_text_is_painted_and_nothing_else_happens(string hostile) =>
        Assert.NotEmpty(PngWriter.Write(new Drawing(30, 10, hostile, hostile, [new Text(new(1, 5), hostile, 8)])));

    private static int Whole(byte[] file, int at) => BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(at, 4));

    private static int InkIn(SKBitmap picture, Box box)
    {
        int found = 0;
        for (int x = Math.Max(0, (int)(box.Left * PngWriter.PixelsPerMm)); x < Math.Min(picture.Width, (int)(box.Right * PngWriter.PixelsPerMm)); x++)
        {
            for (int y = Math.Max(0, (int)(box.Top * PngWriter.PixelsPerMm)); y < Math.Min(picture.Height, (int)(box.Bottom * PngWriter.PixelsPerMm)); y++)
            {
                found += picture.GetPixel(x, y) != SKColors.White ? 1 : 0;
            }
        }

        return found;
    }
}
