using System.Globalization;
using System.Text.Json;
using Cavaxis.Cli.Output;
using Cavaxis.EndToEnd.Tests.Programs;

namespace Cavaxis.EndToEnd.Tests.Options;

public class ValidateTests
{
    private static readonly Lazy<Ended> Json = new(static () => CavaxisProcess.Run("validate", "--json"));

    [Fact]
    public void Every_row_holds_or_is_a_known_miss_and_carries_its_source()
    {
        Assert.Equal(0, Json.Value.ExitCode);
        using JsonDocument document = JsonDocument.Parse(Json.Value.Out);
        JsonElement[] rows = [.. document.RootElement.EnumerateArray()];
        Assert.True(rows.Length > 100);
        Assert.All(rows, static row =>
        {
            Assert.NotEqual(row.GetProperty("knownMiss").GetBoolean(), row.GetProperty("passes").GetBoolean());
            Assert.False(string.IsNullOrWhiteSpace(row.GetProperty("source").GetProperty("citation").GetString()));
        });
    }

    [Fact]
    public void The_table_fits_100_columns_and_counts_as_many_rows()
    {
        Ended text = CavaxisProcess.Run("validate");
        Assert.Equal(0, text.ExitCode);
        Assert.All(text.Lines, static line => Assert.True(line.Length <= CommandOutput.Width, line));
        using JsonDocument document = JsonDocument.Parse(Json.Value.Out);
        int count = document.RootElement.GetArrayLength();
        int holding = document.RootElement.EnumerateArray().Count(static row => row.GetProperty("passes").GetBoolean());
        Assert.InRange(count - holding, 0, count / 20);
        Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"{holding} of {count} rows hold; {count - holding} are known misses; 0 fail"),
            text.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Blood")]
    [InlineData("devices")]
    public void One_room_can_be_asked_for(string room)
    {
        Ended ended = CavaxisProcess.Run("validate", "--json", "--room", room);
        Assert.Equal(0, ended.ExitCode);
        using JsonDocument document = JsonDocument.Parse(ended.Out);
        Assert.NotEmpty(document.RootElement.EnumerateArray());
        Assert.All(document.RootElement.EnumerateArray(), row => Assert.Equal(room, row.GetProperty("room").GetString(), ignoreCase: true));
    }
}
