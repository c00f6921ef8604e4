namespace Cavaxis.Dicom.Worker;

/// <summary>What the worker cannot do with a file, in words for the person.</summary>
/// <param name="message">The reason.</param>
internal sealed class WorkerFaultException(string message) : Exception(message);
