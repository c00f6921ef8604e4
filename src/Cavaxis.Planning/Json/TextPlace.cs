namespace Cavaxis.Planning.Json;

/// <summary>A place in a text file as an editor shows it.</summary>
/// <param name="Line">Line, from 1; a line ends with a line feed.</param>
/// <param name="Column">Column in the line, from 1, in characters (Unicode scalar values), not bytes.</param>
public readonly record struct TextPlace(int Line, int Column);
