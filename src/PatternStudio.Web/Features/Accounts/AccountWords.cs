namespace PatternStudio.Web.Features.Accounts;

/// <summary>Names the resource file of the account pages' words.</summary>
public sealed class AccountWords;
