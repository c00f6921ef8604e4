using Cavaxis.Bedside.Sealing;

namespace Cavaxis.Web.Pages.Share;

/// <summary>Why a sealed file is refused, in words for whoever stands at the screen: what is wrong, and what to do. Nothing of the file or the passphrase is repeated.</summary>
internal static class SealWords
{
    /// <summary>The words.</summary>
    /// <param name="fault">The refusal.</param>
    /// <returns>Two or three sentences.</returns>
    public static string Of(SealFault fault) => fault.Code switch
    {
        SealFaultCode.NotAPack => $"This is not the file that is meant: {fault.Found}. Choose {fault.Accepted}.",
        SealFaultCode.UnsupportedVersion => $"This file was made by another version of the program ({fault.Found}). {fault.Remedy}",
        SealFaultCode.CostOutOfBounds => "This file asks for more of the machine than any file of this program does. Do not trust it; ask for it again by another way.",
        SealFaultCode.WrongLength => "The file is shorter or longer than it says: it was cut off, or something was added on the way. Have it sent again.",
        SealFaultCode.TooLarge => $"The file, or what is in it, is larger than is taken ({fault.Accepted}). {fault.Remedy}",
        SealFaultCode.NotOpened => "It does not open: the passphrase is another one, or the file was changed on the way; the two cannot be told apart. Type the passphrase again as it was agreed. "
            + "If it still does not open, have the file sent again.",
        SealFaultCode.UnreadableContents => "It opens, but what is in it is not of the form that this program writes. Ask for the file again, made with this program.",
        SealFaultCode.OtherPack => "It answers no pack that was made here for a patient of yours. Check which question it answers; whoever made that pack can take it in.",
        SealFaultCode.AnsweredAlready => "This answer is in the record already; nothing was written twice. If another answer is meant, choose its file.",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Code, "Not a refusal."),
    };
}
