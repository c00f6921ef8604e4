using System.Text.Json;
using Cavaxis.Dicom.Identity;
using Cavaxis.Dicom.Tests.Oracle;

namespace Cavaxis.Dicom.Tests.Identity;

public sealed class BasicProfileTests
{
    // The dictionary of pydicom 2.3 (edition 2022): a tag that was written down wrongly would be unknown or of another representation.
    [Fact]
    public void Every_attribute_of_the_table_is_one_of_the_standard_and_identifiers_are_where_they_are_replaced()
    {
        string[] tags = [.. BasicProfile.Actions.Keys.Select(static t => t.ToString("X8", System.Globalization.CultureInfo.InvariantCulture))];
        string printed = OracleRun.Run("/usr/bin/python3", [Path.Combine(AppContext.BaseDirectory, "Oracle", "dump.py"), "--dictionary", .. tags]);
        Dictionary<string, string> known = JsonSerializer.Deserialize<Dictionary<string, string>>(printed)!;
        Assert.InRange(BasicProfile.Count, 600, 700);
        Assert.InRange(known.Count, BasicProfile.Count - 40, BasicProfile.Count);
        foreach ((uint tag, ProfileAction action) in BasicProfile.Actions)
        {
            string entry = known.GetValueOrDefault(tag.ToString("X8", System.Globalization.CultureInfo.InvariantCulture), string.Empty);
            if (entry.Length > 0 && action == ProfileAction.Replace)
            {
                Assert.StartsWith("UI", entry, StringComparison.Ordinal);
            }

            if (entry.StartsWith("PN", StringComparison.Ordinal) || entry.StartsWith("DA", StringComparison.Ordinal))
            {
                Assert.True(action is ProfileAction.Remove or ProfileAction.Empty or ProfileAction.Dummy, entry);
            }
        }
    }

    // GDCM carries the list of an older edition of the standard for its own purposes: what it names, ours must deal with too.
    [Fact]
    public void Nothing_of_the_older_list_that_GDCM_carries_is_missing()
    {
        // gdcm::Anonymizer::GetBasicApplicationLevelConfidentialityProfileAttributes, the attributes of PS3.15 2008 that are identifying in an image.
        uint[] older =
        [
            0x00080014, 0x00080018, 0x00080050, 0x00080080, 0x00080081, 0x00080090, 0x00080092, 0x00080094, 0x00081010, 0x00081030, 0x0008103E, 0x00081040, 0x00081048, 0x00081050,
            0x00081060, 0x00081070, 0x00081080, 0x00081155, 0x00082111, 0x00100010, 0x00100020, 0x00100030, 0x00100032, 0x00100040, 0x00101000, 0x00101001, 0x00101010, 0x00101020,
            0x00101030, 0x00101090, 0x00102160, 0x00102180, 0x001021B0, 0x00104000, 0x00181000, 0x00181030, 0x0020000D, 0x0020000E, 0x00200010, 0x00200052, 0x00200200, 0x00204000,
            0x00400275, 0x0040A124, 0x0040A730, 0x00880140, 0x30060024, 0x300600C2,
        ];
        Assert.All(older, static tag => Assert.NotNull(BasicProfile.Of(tag)));
    }

    [Theory]
    [InlineData(0x00090010, ProfileAction.Remove)]
    [InlineData(0x60003000, ProfileAction.Remove)]
    [InlineData(0x60020010, ProfileAction.Remove)]
    [InlineData(0x50003000, ProfileAction.Remove)]
    [InlineData(0x00080000, ProfileAction.Remove)]
    [InlineData(0x00280010, null)]
    [InlineData(0x00186011, null)]
    [InlineData(0x00080060, null)]
    [InlineData(0x00080016, null)]
    public void Makers_own_curves_and_overlays_go_and_what_the_picture_needs_stays(uint tag, ProfileAction? action) => Assert.Equal(action, BasicProfile.Of(tag));
}
