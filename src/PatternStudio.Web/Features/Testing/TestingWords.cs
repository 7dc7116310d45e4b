namespace PatternStudio.Web.Features.Testing;

/// <summary>Names the resource file of the words around test rounds.</summary>
public sealed class TestingWords;
