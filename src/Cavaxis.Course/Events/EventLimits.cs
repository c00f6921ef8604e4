namespace Cavaxis.Course.Events;

/// <summary>How long the texts and lists of an event may be. All are assumptions of this project, wide enough for a bedside and far below what the record takes (4 MiB an event).</summary>
public static class EventLimits
{
    /// <summary>Characters of a name or identifier.</summary>
    public const int Name = 100;

    /// <summary>Characters of one line.</summary>
    public const int Line = 400;

    /// <summary>Characters of a remark, a reason or a finding.</summary>
    public const int Remark = 2000;

    /// <summary>Characters of a note, a question to or an answer of another centre.</summary>
    public const int Note = 16_000;

    /// <summary>Characters of the text of a case.</summary>
    public const int CaseText = 500_000;

    /// <summary>Characters of a SHA-256 in hexadecimal.</summary>
    public const int Hash = 64;

    /// <summary>Characters of a moment (ISO 8601 with offset).</summary>
    public const int Time = 40;

    /// <summary>Readings taken at one time: as many as there are quantities, and some to come.</summary>
    public const int Readings = 120;

    /// <summary>Steps of a procedure.</summary>
    public const int Steps = 120;

    /// <summary>Cannulae of one patient at one time.</summary>
    public const int Cannulae = 12;

    /// <summary>Views of one step.</summary>
    public const int Views = 20;

    /// <summary>Vein segments of one examination.</summary>
    public const int Veins = 40;

    /// <summary>Bytes of one text as it is written, escapes and all.</summary>
    internal const int LongestTextBytes = 3 * 1024 * 1024;
}
