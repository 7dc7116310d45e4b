using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Identity.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore;
using PatternStudio.Studio.Accounts;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;
using PatternStudio.Studio.Rounds;
using PatternStudio.Studio.Tags;

namespace PatternStudio.Studio.Data;

/// <summary>The studio's store. One context for each operation, from the factory; never shared.</summary>
public abstract class StudioDbContext(DbContextOptions options) : IdentityUserContext<Account, Guid>(options)
{
    public DbSet<Studio> Studios => Set<Studio>();

    public DbSet<Membership> Memberships => Set<Membership>();

    public DbSet<KeptPreferences> Preferences => Set<KeptPreferences>();

    public DbSet<Design> Designs => Set<Design>();

    public DbSet<DesignVersion> Versions => Set<DesignVersion>();

    public DbSet<Draft> Drafts => Set<Draft>();

    public DbSet<Computation> Computations => Set<Computation>();

    public DbSet<DesignFace> Faces => Set<DesignFace>();

    public DbSet<DesignPhoto> DesignPhotos => Set<DesignPhoto>();

    public DbSet<Tag> Tags => Set<Tag>();

    public DbSet<DesignTag> DesignTags => Set<DesignTag>();

    public DbSet<Swatch> Swatches => Set<Swatch>();

    public DbSet<Photo> Photos => Set<Photo>();

    public DbSet<Yarn> Yarns => Set<Yarn>();

    public DbSet<ColourYarn> ColourYarns => Set<ColourYarn>();

    public DbSet<StashLot> Lots => Set<StashLot>();

    public DbSet<Reservation> Reservations => Set<Reservation>();

    public DbSet<TestRound> Rounds => Set<TestRound>();

    public DbSet<ShareLink> Links => Set<ShareLink>();

    public DbSet<Tester> Testers => Set<Tester>();

    public DbSet<TesterReport> Reports => Set<TesterReport>();

    public DbSet<Remark> Remarks => Set<Remark>();

    public DbSet<Correction> Corrections => Set<Correction>();

    public DbSet<CorrectionWording> CorrectionWordings => Set<CorrectionWording>();

    public DbSet<CorrectionPage> CorrectionPages => Set<CorrectionPage>();

    /// <summary>Fixed here, not by options: so the model is the same at run time, in the tools and in tests.</summary>
    protected override Version SchemaVersion => IdentitySchemaVersions.Version2;

    protected override void OnModelCreating(ModelBuilder builder)
    {
        base.OnModelCreating(builder);
        builder.ApplyConfigurationsFromAssembly(typeof(StudioDbContext).Assembly);
        builder.Entity<IdentityUserClaim<Guid>>().ToTable("AccountClaims");
        builder.Entity<IdentityUserLogin<Guid>>().ToTable("AccountLogins");
        builder.Entity<IdentityUserToken<Guid>>().ToTable("AccountTokens");
    }

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<UtcConverter>();
}

/// <summary>The store in a SQLite file.</summary>
public sealed class SqliteStudioDbContext(DbContextOptions<SqliteStudioDbContext> options) : StudioDbContext(options);

/// <summary>The store in PostgreSQL.</summary>
public sealed class PostgresStudioDbContext(DbContextOptions<PostgresStudioDbContext> options) : StudioDbContext(options);
