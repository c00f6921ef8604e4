namespace Cavaxis.Dicom.Wire;

/// <summary>How an element's value follows on the wire.</summary>
internal enum ElementKind : byte
{
    /// <summary>Its bytes.</summary>
    Bytes = 0,

    /// <summary>Its items, each a list of elements.</summary>
    Items = 1,

    /// <summary>Pixels in one piece that stay in the worker: only their length follows.</summary>
    Pixels = 2,

    /// <summary>Pixels in fragments that stay in the worker: only their lengths follow.</summary>
    Fragments = 3,
}
